"""The words people use for what they own: how many, how heavy, how high, and all that says nothing."""

import re

from core.notation.quantities import MASS_UNIT, NUMBER

# `no equipment`, `just me`, `nothing at home`: all of the text, or all of a part of it.
NOTHING = re.compile(
    r"^\W*(?:sorry,? )?(?:i (?:have|own|got) |i'?ve got )?"
    r"(?:nothing|none|no|nope|nada|nil|zero|not a thing|no (?:equipment|gear|weights?|kit|stuff|things?|tools)"
    r"|(?:i )?(?:don'?t|do not|haven'?t) (?:have |own |got )+(?:anything|a thing|any (?:equipment|gear|weights?|kit))"
    r"|(?:just |only )?(?:me|myself|my body|(?:my )?body ?weight)(?: only)?|just me)"
    r"(?: at all| here| at home| really| today| yet| sorry| thanks?| (?:i'?m )?afraid| so far| else| to train with"
    r"| or anything| whatsoever| right now| at the moment)*\W*$"
)
PARTING = re.compile(
    r"[,;\n!]+|\.(?=\s|$)|\s\+\s|\s?&\s?|\s/\s"
    r"|\b(?:and|plus|also|as well as|but|or|just|only|except|apart from|other than|i (?:think|guess|suppose)"
    r"|with(?=\s(?:(?:a|an|some(?! books| bricks| sand| stones| rocks)|two|one)\s|[1-9]\s?x\s?[0-9])))\b"
)
LACKING = re.compile(
    r"^\s*(?:no|without|not (?:a|an|any|one)|(?:i )?(?:don'?t|do not|haven'?t)(?: have| own| got)+(?: any| an?)?)\b"
)
# What a bag or jug holds says that its weight is fixed: `backpack with books 8 kg`.
FILLED = re.compile(
    r"\b(?:(?:filled|loaded|stuffed|packed|full)\s(?:up\s)?(?:with|of)|with|of(?=\swater))\s"
    r"(?:some |a few |lots of |my |old )?(?:books?|bricks?|sand|water|rice|stones?|rocks?|clothes|bottles|cans|tins"
    r"|potatoes|flour)\b(?!\s(?:bottle|jug))"
)
# `with 60 kg of plates`: all the plates together.
PLATES_IN_ALL = re.compile(
    rf"(?:\bwith\s|\bup to\s)?(?<![0-9.x])(?P<a>{NUMBER})\s?(?P<u>{MASS_UNIT})\s?(?:worth\s)?of\s(?:weight |bumper )?"
    r"(?:plates?|weights?|discs?|bumpers?)\b"
)
_ADJUSTABLE = (
    r"adjustable|selectable|variable|changeable|settable|loadable|dial(?:able|led|ed)?"
    r"|spin ?-?lock|quick ?-?change"
)
ADJUSTABLE = re.compile(rf"\b(?:{_ADJUSTABLE})\b")
# Stands in a stretch for whose else a thing is; a letter tells which partner.
PARTNER = "ispartnered"
SHARED = re.compile(rf"\b{PARTNER}(?P<which>[a-z])\b")
PAIR = re.compile(
    r"(?<![0-9.])(?P<t>[1-9])\s?x\s?(?=[0-9])|(?<![0-9.])(?P<n>[1-9])(?: of)?\s(?=\s?(?!kg|lb|pound|kilo"
    r"|to\b|cm|in\b|l\b|ltr|litre|liter|gal)[a-z0-9])"
    r"|\b(?:a )?(?P<c>one|two|three|four|pair|couple|set|double|both)(?: of)?\b|\bx\s?(?P<d>[1-9])\b"
    r"|\b(?P<e>each|pair)\b|\((?P<p>[1-9])\)"
)
TIMES = re.compile(r"(?<![0-9.])[1-9]\s?x\s?(?=[0-9])")
PLACED = re.compile(
    r"\b(?:hanging|hung|mounted|attached|fixed|which|in|on|from|under|near|next|outside|upstairs)\b"
)
RANGE = re.compile(
    rf"(?:from )?(?P<a>{NUMBER})\s?(?P<ua>{MASS_UNIT})?\s?(?:-|to|up to|until"
    rf"|through)\s?(?P<b>{NUMBER})\s?(?P<ub>{MASS_UNIT})?"
)
UP_TO = re.compile(rf"(?:up to|max(?:imum)?(?: of)?|to)\s?(?P<b>{NUMBER})\s?(?P<ub>{MASS_UNIT})?")
STEP = re.compile(
    rf"\b(?:in |by )?(?:steps? of )?(?P<a>{NUMBER})\s?(?P<u>{MASS_UNIT})?\s?(?:steps?|increments?"
    rf"|jumps?)\b|\b(?:steps?|increments?) of (?P<a2>{NUMBER})\s?(?P<u2>{MASS_UNIT})?"
)
HEIGHT = re.compile(rf"(?P<a>{NUMBER})\s?(?P<u>cm|inch(?:es)?|in\b|\"|m\b)(?:\s?(?:high|tall))?")
LITRES = re.compile(rf"(?<![0-9.])(?P<a>{NUMBER})\s?-?(?:l|lt|ltrs?|litres?|liters?)\b")
LOAD = re.compile(
    rf"(?<![0-9.])(?<![0-9]:)(?P<a>{NUMBER})(?!:[0-9])(?:'?s\b)?\s?-?(?P<u>{MASS_UNIT})?(?:'?s\b)?"
)
# An article or a count begins another thing: `5 kg, 8 kg and a 12 kg kettlebell`.
BEGINS_ANEW = re.compile(r"^\s*(?:an?|one|two|three|my|some|the)\s")

FILLER = re.compile(
    r"\b(?:i'?ve|i'?m|it'?s|there'?s|i|have|got|own|there|is|are|a|an|the|some|my|of|at|home|here|old|with|that"
    r"|goes|go|from|up|to|each|heavy|light|small|big|sturdy|in|kg|maybe|weighing|single|pair|set|on|for|new|nice"
    r"|about|around|roughly|approx|kind|sort|normal|regular|simple|good|pretty|little|few|lots?|also|too|well"
    rf"|{_ADJUSTABLE}|wooden|solid|strong|stable|large|long|short|fixed|spare|couple)\b"
)
# Said to people, not of things.
SMALL_TALK = re.compile(
    r"\b(?:that'?s|thats|thatis|it|this|all|think|guess|really|currently|right|now|today|sorry|lol|haha|thanks?|thank|you"
    r"|please|so|yeah|yes|ok|okay|hi|hello|hey|nothing|else|more|other|others|than|probably|as|if|counts?|helps?"
    r"|anything|stuff|things?|equipment|gear|kit|not|much|available|use|can|could|body ?weight|me|myself"
    r"|own|basically|actually|mostly|sometimes|most|days?|we|us|our|s|be|will|would|know|sure|hope|works?|mine|afraid"
    r"|do|don'?t|dont|ish|etc|garage|house|flat|apartment|living|bedroom|kitchen|floor|room|space|garden|balcony|[a-z]{3,}ly)\b"
)
# Known things that no version depends on: always there, or of no use to it.
NO_MATTER = re.compile(
    r"(?:(?:yoga|exercise|gym|gymnastics|training|thick|thin|foam) )?(?:mats?|towels?|blocks?)|(?:foam )?rollers?"
    r"|walls?|floor|ground|doors?|doorways?|door frames?|mirrors?|sofas?|couch(?:es)?|settee|armchairs?|beds?|pillows?"
    r"|cushions?|timer|watch|stopwatch|treadmill|running machine|elliptical|cross ?trainer|stepper|(?:swiss|exercise"
    r"|gym|yoga|stability|balance) balls?|(?:squat |power |full |half )?(?:rack|cage)|collars?|clips?|gloves?|chalk"
    r"|(?:lifting |weight )?belt|shoes?|sneakers|trainers|phone|tv|laptop|garden|park|balcony|heart rate monitor"
)
