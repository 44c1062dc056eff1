"""What coaches type around the lines to say what is scored: aims, no score at all, the heaviest of the day.

A row is a shape and what it says, as facts named like the fields of a `Block`. In a shape a space is some space or a
hyphen, `_` the same or nothing, and `<word>` one of `PARTS`. Of two phrasings the longer stands first.
"""

from core.measures import AmountUnit
from core.notation.phrases.aims import aim_above, aim_below, aim_count, aim_effort, aim_time, aim_within
from core.notation.phrases.facts import (
    best_of,
    heaviest,
    most_calories,
    most_metres,
    practice,
    says,
    within,
)
from core.notation.phrases.phrasing import Phrase, phrase
from core.sessions.values import Counts, Format

_WORST, _BEST = "(?:slowest|worst|lowest|fewest|smallest)", "(?:fastest|best|highest|quickest)"
_OF_SEVERAL = "(?:round|set|interval|one|split|effort)"
_WHICH_COUNTS = (
    rf"\bscore(?:d|s)?(?: is| by)?[:=]?_(?:=_)?(?:the |your )?<which>(?: (?:{_OF_SEVERAL}|time)s?)?[?]?",
    rf"\b(?:your |the )?<which> {_OF_SEVERAL}(?: counts| is (?:the |your )?score)?[?]?",
)

OF_SCORE: tuple[Phrase, ...] = (
    # aims first: they too count rounds and minutes
    phrase(r"<aim><is>(?:effort|rpe)<is><lo>(?:<to><hi>)?(?:\s?/\s?10|(?![0-9]))", aim_effort),
    phrase(
        r"<aim><is><below>\s?(?:<dur>|<lo>_(?:<rounds>|reps?\b))(?: (?:each|per round|every round)\b)?",
        aim_below,
    ),
    phrase(r"<aim><is><below>\s?(?P<time>[0-9]{1,3})(?=[\s.!,;)]*$)", aim_within),
    phrase(
        r"<below>\s?<dur> is (?:good|great|solid|strong|fast|respectable|the (?:aim|goal|target))\b",
        aim_within,
    ),
    phrase(r"<aim><is><above>\s?(?:<dur>|<lo>_(?:<rounds>|reps?\b))", aim_above),
    phrase(
        r"<aim><is><lo>(?:<to><hi>)?(?P<more>\s?(?:\+|or more))?"
        r"_(?P<what>(?:complete |full )?<rounds>|reps?\b|unbroken(?: reps)?\b)",
        aim_count,
    ),
    phrase(r"<aim><is><lotime>(?:<to><hitime>)?(?![0-9])(?!<to>[0-9])", aim_time),
    phrase(r"<hope>(?: between)? (?P<lo>[0-9]{1,3})(?: and |<to>)<hitime>(?![0-9])", aim_time),
    phrase(r"<hope>(?: between)? <lo>(?: and |<to>)<hi>(?P<more>)_(?P<what><rounds>|reps?\b)", aim_count),
    phrase(r"\bsub _<dur>", aim_within),
    # without a score
    phrase(r"\bnot (?:for|against) (?:time|the clock)\b|\bnft\b", says(format=Format.QUALITY)),
    phrase(r"\bfor (?:quality|good form|form)\b", says(format=Format.QUALITY)),
    phrase(r"(?<!\+\s)(?<!and\s)\bmobility\b(?: work| session| flow| only)?", says(format=Format.QUALITY)),
    phrase(
        r"\b(?:not (?:for (?:a )?)?scored?|no scores?|unscored|don't score(?: it| this)?)\b",
        says(scored=False),
    ),
    phrase(r"\b(?:for score|scored)\b", says(scored=True)),
    phrase(r"<dur> (?:to |of |for )?(?:practi[cs]e|practi[cs]ing|play(?:ing)? with)\b<of>", practice),
    phrase(r"\bpracti[cs]e<is>(?:for )?<dur>", practice),
    # said in full
    phrase(
        r"(?<!x.)(?<!x)(?<!of.)(?:\btest of )?\bmax(?:imum|imal)? rep(?:s|etitions?)?\b<of>",
        says(format=Format.MAX_REPS),
    ),
    phrase(
        r"^[\s;]*max(?:imum|imal)? (?:k?cals?|calories)\b(?=[\s;:,.]*(?:(?:in|for|within) <dur>)?[\s;:,.]*$)",
        says(format=Format.MAX_REPS, in_kcal=True),
    ),
    phrase(
        r"\b(?:hold )?(?:it )?(?:for )?(?:as )?long as (?:possible|(?:you|ya|u) can|(?:the |your )?form holds)\b",
        says(format=Format.HOLD),
    ),
    phrase(r"^[\s;]*for load\s?(?::|$)", says(format=Format.MAX_LOAD)),
    phrase(r"^[\s;]*max(?:imum|imal)? holds?\s?(?::|$)", says(format=Format.HOLD)),
    phrase(r"\b(?:the )?heaviest weight\b(?: of the day)?", says(format=Format.MAX_LOAD)),
    phrase(r"\btime trial\b", says(format=Format.TIME_TRIAL)),
    phrase(
        r"\b(?:(?:for|cover|go) )?(?:the )?"
        r"(?:(?:greatest|most|longest|furthest|farthest|max(?:imum|imal)?)(?: possible)? distance"
        r"|max(?:imum|imal)? met(?:re|er)s)\b"
        r"(?: possible| you can)?",
        says(format=Format.MAX_REPS, counted_in=AmountUnit.METRES),
    ),
    phrase(
        r"\b(?:record|note|write(?: down)?|score(?: is|:)?)(?: your| the| is)?(?: total| final| overall)? time\b",
        says(format=Format.FOR_TIME),
    ),
    *(
        phrase(shape.replace("<which>", which), says(counts=counts))
        for which, counts in ((_WORST, Counts.WORST), (_BEST, Counts.BEST))
        for shape in _WHICH_COUNTS
    ),
    phrase(r"\b(?:each|every) (?:round|set|one|interval)(?: is)? <fast>", says(format=Format.INTERVALS)),
    phrase(r"^[\s;]*sets\s?(?::|$)", says(format=Format.SETS)),
    phrase(r"^[\s;]*intervals\s?(?::|$)|(?<=[a-z].)intervals\s?:", says(format=Format.INTERVALS)),
    phrase(r"\bhow (?:many|far|much)\b(?! rounds)", says(format=Format.MAX_REPS)),
    phrase(r"(?<=[\s,;])(?:for |total )?(?:calories|cals)(?: total)?[\s;.,!?]*$", most_calories),
    phrase(r"(?<=[\s,;])(?:distance|met(?:re|er)s)[\s;.,!?]*$", most_metres),
    phrase(r"(?<=[\s,;])longest[\s;.,!?]*$", says(format=Format.HOLD)),
    phrase(r"\bbest of <n>\b(?: (?:tries|attempts|goes))?", best_of),
    # the heaviest of the day
    phrase(
        r"<dur> to (?:(?=(?:find|build|work|establish|test|hit|"
        r"(?:an? |your )?(?:heavy|max) (?:singles?|doubles?|triples?|set|[1-9])"
        r"|(?:an? )?[1-9]_rm)\b)|(?:get|do|work up) (?:there|it)\b)",
        within,
    ),
    phrase(
        r"\b(?:find|(?:build_|work_|go_)?up to|(?:build_|work_)to|establish|test|hit|to(?= an? heavy))"
        r" (?:an? |your |today's )?(?:new )?(?:heavy|max(?:imum|imal)?|top|solid|strong)(?: set of)?"
        r"_(?P<n>singles?\b|doubles?\b|triples?\b|[0-9]{0,2})(?: reps?\b)?<of>",
        heaviest,
    ),
    phrase(
        r"(?:\b(?:find|test|hit|establish|(?:(?:build|work|go) )?(?:up )?to) )?(?:an? |your "
        r")?(?<!of.)(?<!%.)(?<!%)(?P<n>[0-9]{1,2})_(?:rm|rep max)\b<of>",
        heaviest,
    ),
    phrase(
        r"\b(?:(?:find|build|work|get)(?: up)? (?:to )?)?(?:your |the |today's )?heaviest(?: set of)?"
        r"_(?P<n>singles?\b|doubles?\b|triples?\b|[0-9]{1,2}\b)(?: reps?\b)?(?: of the day\b|<of>)",
        heaviest,
    ),
    phrase(
        r"\b(?:find|build(?: up)? to|work(?: up)? to|get to) (?:your |the |today's )heaviest\b",
        says(format=Format.MAX_LOAD),
    ),
    phrase(
        r"^[\s;]*(?:an? )?heavy(?: set of)?_(?P<n>singles?\b|doubles?\b|triples?\b|[1-9](?=[\s;.,]*$))",
        heaviest,
    ),
    phrase(r"(?<=[a-z:,\-]\s)heavy_(?P<n>singles?\b|doubles?\b|triples?\b|[1-5](?=[\s;.,]*$))", heaviest),
)
