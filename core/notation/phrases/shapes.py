"""What coaches type around the lines: formats, rounds, caps, rests, aims. All slang of formats lives here.

A row of the table is a shape and what it says, as facts named like the fields of a `Block`. In a shape a space is some
space or a hyphen, `_` the same or nothing, and `<word>` one of `PARTS`. Of two phrasings the longer stands first.
"""

import re
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache, cached_property

from core.measures import AmountUnit
from core.notation.needles import needles
from core.notation.phrases.aims import (
    Facts,
    Match,
    aim,
    aim_above,
    aim_below,
    aim_count,
    aim_effort,
    aim_time,
)
from core.notation.phrases.facts import (
    amrap,
    amrap_again,
    at_each,
    bare_on_off_for,
    bare_on_off_times,
    best_of,
    cap,
    climbing,
    each_round_for_time,
    every,
    every_for,
    every_times,
    for_so_long,
    heaviest,
    ladder,
    listed,
    minutely,
    minutely_for,
    minutely_times,
    most_calories,
    most_metres,
    of_each,
    on_off,
    on_off_times,
    practice,
    rest,
    rest_between,
    rest_in_short,
    rounds,
    rounds_for_time,
    says,
    scheme,
    sets,
    sets_of,
    tabata,
    team,
    timed_on_off_times,
    times_of_a_chain,
    tries,
    within,
    work,
)
from core.notation.phrases.parts import PARTS
from core.notation.quantities import seconds
from core.notation.text import Strip
from core.sessions.values import Counts, Format

_WORST, _BEST = "(?:slowest|worst|lowest|fewest|smallest)", "(?:fastest|best|highest|quickest)"
_OF_SEVERAL = "(?:round|set|interval|one|split|effort)"
_WHICH_COUNTS = (
    rf"\bscore(?:d|s)?(?: is| by)?[:=]?_(?:=_)?(?:the |your )?<which>(?: (?:{_OF_SEVERAL}|time)s?)?[?]?",
    rf"\b(?:your |the )?<which> {_OF_SEVERAL}(?: counts| is (?:the |your )?score)?[?]?",
)


@dataclass(frozen=True, eq=False)
class Phrase:
    """A shape of words and what it says; compiled when it is first tried, as most never are."""

    source: str
    facts: Callable[[Match], Facts]

    @cached_property
    def pattern(self) -> re.Pattern[str]:
        return re.compile(self.source)


def phrase(shape: str, facts: Callable[[Match], Facts]) -> Phrase:
    """A row of the table; ready-made parts come in only after spaces have got their meaning."""
    spaced = shape.replace(" ", r"[\s\-]{1,3}").replace("_", r"[\s\-]{0,3}")
    return Phrase(re.sub(r"(?<!\?P)<([a-z]+)>", lambda part: PARTS[part[1]], spaced), facts)


PHRASES: tuple[Phrase, ...] = (
    # aims first: they too count rounds and minutes
    phrase(r"<aim><is>(?:effort|rpe)<is><lo>(?:<to><hi>)?(?:\s?/\s?10|(?![0-9]))", aim_effort),
    phrase(
        r"<aim><is><below>\s?(?:<dur>|<lo>_(?:<rounds>|reps?\b))(?: (?:each|per round|every round)\b)?",
        aim_below,
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
    phrase(r"\bsub _<dur>", lambda match: aim("score", None, seconds(match["time"]))),
    # without a score
    phrase(r"\bnot (?:for|against) (?:time|the clock)\b|\bnft\b", says(format=Format.QUALITY)),
    phrase(r"\bfor (?:quality|good form|form)\b", says(format=Format.QUALITY)),
    phrase(r"\bmobility\b(?: work| session| flow| only)?", says(format=Format.QUALITY)),
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
    # intervals
    phrase(
        r"\btabata\b[\s:,(\-]{0,3}(?:<n>_x_)?20_(?:s|sec|secs|seconds|\")?(?: work)?"
        r"\s?/\s?10_(?:s|sec|secs|seconds|\")?(?: rest)?"
        r"(?:[\s,:;)\-]{0,4}(?:x_)?(?:[1-9][0-9]?)_(?:times|rounds|x)\b)?",
        tabata,
    ),
    phrase(r"\btabatas?\b<of>", tabata),
    phrase(r"\be(?P<every>[2-9])mom(?:\b|(?=x))<is>x_<n>(?![0-9.']|:[0-9]|_min|_sec)", minutely_times),
    phrase(r"\be(?P<work>[0-9]{1,2}:[0-5][0-9]|[0-9]{2,3}_s\b)", every),
    phrase(r"\be(?P<work>[0-9]{2,3}_s)\b<is>x_<n>(?![0-9.']|:[0-9]|_min|_sec)", every_times),
    phrase(r"\be(?P<every>[1-9]?)mom(?:\b|(?=[0-9]))<is>(?:for |of |x )?<minutes>", minutely_for),
    phrase(r"<minutes>_(?:an? )?\be(?P<every>[1-9]?)mom\b", minutely_for),
    phrase(r"\be(?P<every>[1-9]?)mom\b", minutely),
    phrase(r"\bevery (?P<every>)min(?:ute)?(?: on the min(?:ute)?)?\b<is>(?:for |x )<minutes>", minutely_for),
    phrase(r"<minutes>_:?every (?P<every>)min(?:ute)?(?: on the min(?:ute)?)?\b", minutely_for),
    phrase(r"\bevery (?P<every>)min(?:ute)?(?: on the min(?:ute)?)?\b", minutely),
    phrase(r"<minutes> on the (?P<every>)min(?:ute)?\b", minutely_for),
    phrase(r"\bon the (?P<every>)minute\b<is>(?:every minute )?(?:for |x )?<minutes>", minutely_for),
    phrase(r"\b(?:on the min(?:ute)?\b(?! [0-9])|otm\b)(?P<every>)", minutely),
    phrase(r"<n> (?:different )?stations\b(?! of)|^[\s;]*stations\b(?=[\s;,:])", says(in_turn=True)),
    phrase(
        r"^[\s;:,]*(?:alternating|alternate)(?: between)?(?: minutes| stations| movements| exercises)?[\s;:,]*$",
        says(in_turn=True),
    ),
    phrase(r"<n>_x?_(?:<rounds>|sets\b)[\s,:;\-]{0,4}every <work>", every_times),
    phrase(r"\b(?:every|on the) <work><is>(?:for )?<n>_(?:<rounds>|times\b|sets\b)", every_times),
    phrase(r"\bevery <work><is>for <minutes>", every_for),
    phrase(r"\b(?:every|on the) <work><is>x_<n>(?: <rounds>| sets\b| times\b)?(?![0-9.])", every_times),
    phrase(r"\bevery <work>", every),
    phrase(
        r":?<work>_<on>\b<joint><off>_<rests>\b[\s,:\-]{0,3}(?:x|for)_<n>"
        r"(?: <rounds>| sets\b| times\b)?(?![0-9.]|:[0-9]| min)",
        on_off_times,
    ),
    phrase(r":?<work>_<on>\b<joint><off>_<rests>\b[\s,:\-]{0,3}<n>(?: <rounds>| times\b)", on_off_times),
    phrase(
        r"<n>_x_:?<work>_<on>\b<joint><off>_<rests>\b",
        on_off_times,
    ),
    phrase(
        r":?<work>_<on>\b<joint><off>_<rests>\b(?! between| after)",
        on_off,
    ),
    phrase(r"\bwork<is><work>[\s/,:\-]{0,3}rest<is><off>(?! between| after)", on_off),
    phrase(
        r"\bwork (?:for )?<work>[\s,]{1,3}(?:and |then )?(?:rest|change(?: over)?|swap|switch) (?:for )?<off>",
        on_off,
    ),
    phrase(r":?<work>\s?[/:]\s?<off>_(?:work[\s/:]rest|on[\s/]off|intervals)\b", on_off),
    phrase(r"<dur> (?:at |per |on |for )?(?:each|every|per|a) (?:station|exercise|movement)\b", at_each),
    phrase(r"(?:^|(?<=[:,;.]))[\s;*\-]*<dur> each[\s;:]*$", at_each),
    phrase(r"<dur> each of\b", work),
    phrase(r"^[\s;*]*work(?:ing)?(?: time)?<is><dur>", work),
    phrase(r"^[\s;*]*<work>\s?/\s?<off><is>(?:for )?<dur>", bare_on_off_for),
    phrase(r"<n>_<rounds>(?: of)?[\s,:@]{1,3}<work>\s?/\s?<off>(?=[\s\-:;,.]|$)", bare_on_off_times),
    phrase(
        r"^[\s;*]*<work>\s?/\s?<off>_x_<n>(?: <rounds>| sets\b| times\b)?(?![0-9.]|_[a-z])",
        bare_on_off_times,
    ),
    phrase(r"^[\s;*]*<work>\s?/\s?<off>[\s,;:]{1,3}<n>_<rounds>", bare_on_off_times),
    phrase(
        r"<n>_x_\(?_:?<work>\s?[/+]\s?<off>(?: (?:rest|off|easy|light|recovery)\b)?_\)?", timed_on_off_times
    ),
    # rests and caps before bare durations mean anything else
    phrase(
        r"(?:with )?(?:a )?\b(?:<pause>\b|r(?=\s?[0-9]|\s?[=:]\s?:?[0-9]))(?: for| of)?<is><dur>(?!<to>[0-9])<between>",
        rest,
    ),
    phrase(r"(?:with )?(?:a )?<dur>_(?:of )?<pause>\b<between>", rest),
    phrase(r"<dur><between>", rest_between),
    phrase(r"<dur> off\b", rest),
    phrase(r"(?<=[,;:]\s)(?P<n>[0-9]{2,3})_(?:off|rest)\b", rest_in_short),
    phrase(r"\b(?:then )?rest<is>(?P<n>[0-9]{1,3})(?=[\s\-*;]*(?:$|[.,)](?:\s|$)))", rest_in_short),
    phrase(
        r"(?<![a-z0-9&+/@])(?<![&+/@]\s)r_(?P<n>[0-9]{1,3})\b(?!\s?(?:m|k|cal|reps?|x)\b|[.:/][0-9])"
        r"(?: after [a-h][1-9]?\b)?",
        rest_in_short,
    ),
    phrase(r"<between><is><dur>(?!<to>[0-9])", rest_between),
    phrase(
        r"\b(?:time_cap|cap(?:ped)?|tc|(?:time_)?limit|maximum(?: time)?)"
        r"(?:\b|(?=[0-9]))(?: it)?(?: at| of| is| after)?<is><minutes>",
        cap,
    ),
    phrase(r"<dur>_(?:(?:time_)?(?:cap|tc|limit)|at (?:the )?most|tops)\b", cap),
    phrase(r"<dur>,? (?:(?:and|then) ){1,2}(?:you |we |everybody )?(?:stop|are done)\b", cap),
    phrase(r"\b(?:at most|(?:no|not) (?:more|longer) than) <dur>(?=[\s;.,!)]*$)", cap),
    phrase(r"(?<![a-z0-9].)(?<![a-z0-9])max(?:imum|imal)? <dur>(?=[\s;.,!)]*$)", cap),
    phrase(r"(?<![0-9.:\-])(?P<time>[0-9]{1,3}) cap\b", cap),
    phrase(r"\byou have <minutes>", within),
    # as many rounds as possible
    phrase(r"<dur>_(?:ascending )?ladder\b<of>", amrap),
    phrase(r"\b(?:ascending |climbing )?ladder<is>(?:for |in )?<dur>", amrap),
    phrase(r"\b<amrap><is><n>_x_<dur>", amrap_again),
    phrase(r"<n> (?:blocks|parts|pieces|sections) of <dur>[\s:,\-]{0,3}<amrap>", amrap_again),
    phrase(r"<n>_x_(?:an? )?<amrap>(?!-[0-9])<is><minutes>", amrap_again),
    phrase(r"<n>_x_<dur>[\s:,\-]{0,3}<amrap>", amrap_again),
    phrase(r"\b<amrap>(?:\b|(?=[0-9]))<is>(?:in |of |for |within |x )?<minutes><of>", amrap),
    phrase(r"\b(?:in |for )?<dur>(?: of| to (?:do|get))?[\s:,\-]{0,3}(?:an? )?<amrap><of>", amrap),
    phrase(r"(?<![0-9.:\-])(?P<time>[0-9]{1,3}) <amrap><of>", amrap),
    phrase(r"(?<!x)(?<!x.)\b<amrap>\b<of>", says(format=Format.AMRAP)),
    phrase(r"\bhow many rounds (?:in |within )<minutes><of>", amrap),
    # as fast as possible
    phrase(r"<n>_x?_<rounds>[,:]?_each(?: one)? <fast>", each_round_for_time),
    phrase(r"\beach(?: (?:one|piece|part))?(?: is)? <fast>", says(format=Format.FOR_TIME, apart=True)),
    phrase(r"<n>_x?_<rounds><is>(?:each )?(?:round )?(?:<fast>|ft\b|f\.t\.)<of>", rounds_for_time),
    phrase(r"<n>_rft\b<of>", rounds_for_time),
    phrase(r"<fast><is><n>_<rounds><of>", rounds_for_time),
    phrase(r"^[\s;*]*ft\b(?=[\s:;,]|$)|\bf\.t\b\.?", says(format=Format.FOR_TIME)),
    phrase(
        r"(?:(?<=[a-z;]\s)|(?<=-[0-9]\s)|(?<=[\-/][0-9]{2}\s))ft\b(?=\s?[:;,.]|\s*$)",
        says(format=Format.FOR_TIME),
    ),
    phrase(
        r"\b(?:<fast>|rft\b|time it\b(?! if)|best time\b|(?:write|note) the time\b)(?: complete)?<of>",
        says(format=Format.FOR_TIME),
    ),
    # schemes and rounds
    phrase(
        r"(?:\b(?:and|then|keep) )?\badd(?:ing)? <n>(?: (?:more|reps?|of each|to each|more of each|rep of each)){0,2}"
        r" (?:each|every|per|a) (?:round|time|set)\b(?: (?:until|till|for as long) [a-z ]{3,30}$)?",
        climbing,
    ),
    phrase(r"\bladder<is>(?P<a>[0-9]{1,3})(?P<b>)<to>(?P<z>[0-9]{1,3})(?![0-9./\-]|:[0-9])<of>", ladder),
    phrase(
        r"(?<![0-9.\-])(?P<a>[0-9]{1,3})-"
        r"(?P<b>[0-9]{1,3})-(?:[0-9]{1,3}-){0,5}\.\.\.-?(?P<z>[0-9]{1,3})(?![0-9])<of>",
        ladder,
    ),
    phrase(r"(?<![0-9.\-])(?P<a>[0-9]{1,3})(?P<b>) (?:down |up )to (?P<z>[0-9]{1,3})(?![0-9])<of>", ladder),
    # `10 to 1` and `10-1` can only be meant downwards; `8 to 10` is a range
    phrase(
        r"(?<![0-9.:\-])(?P<a>[0-9]{1,3})(?P<b>)(?:\s?-\s?|\sto\s)(?P<z>1)"
        r"(?![0-9.:/\-]|\s?(?:min|sec|s\b|kg|lb))<of>",
        ladder,
    ),
    phrase(r"(?<!tempo.)<scheme>(?: rep(?:s|etitions?)?(?: each)?\b)?<of>(?! tempo)", scheme),
    phrase(r"<listed>(?: rep(?:s|etitions?)?(?: each)?\b)?<of>(?![%@])", listed),
    phrase(r"\b(?:rounds?|rds)\s?[:=]\s?<n>(?![0-9]|_[a-z])", rounds),
    phrase(r"<n>_-_[0-9]{1,2}_<rounds><of>", rounds),
    phrase(r"<n>_x?_<rounds><of>", rounds),
    phrase(r"\b(?:repeat|complete|do this) x?_<n>_(?:times|x)\b", rounds),
    phrase(r"(?<=[a-z])\sx_<n>(?=[\s;.]*$|[;,]\s)", times_of_a_chain),
    phrase(r"\b(?:super|tri|giant)_sets?<is>x_<n>(?![0-9])", sets),
    phrase(r"<n>_x?_(?:super|tri|giant)_sets?\b<of>", sets),
    phrase(r"<n> sets of each\b", sets),
    phrase(r"(?:^|:)[\s;*]*<n>_x[\s:]*$", rounds),
    phrase(r"(?<=[a-z])\s<n>_x\s?:[\s;]*$", rounds),
    phrase(r"(?<=[a-z])\sx_<n>\s?:[\s;]*$", rounds),
    phrase(r"^[\s;*]*(?:then )?<n> times ?:", rounds),
    phrase(r"\b(?:go )?round <n> times\b", rounds),
    phrase(r"<n>_x_(?:through|round|around|over)\b", rounds),
    phrase(r"(?:^|(?<=[,;:]\s))<n> times(?=[\s;.,]*$)", rounds),
    phrase(r"(?<!x.)(?<!x)<n> (?:attempts|tries|goes|gos)\b", tries),
    phrase(r"^[\s;*]*<n>_x: ?(?=[0-9])", rounds),
    phrase(r"^[\s;*,.]*x_<n>[\s;,.]*$", rounds),
    phrase(
        r"<n> sets of (?P<a>[0-9]{1,3})(?:\s?-\s?(?P<b>[0-9]{1,3}))?(?: reps?| each)?(?:[\s:]*$|_:(?=\s))",
        sets_of,
    ),
    phrase(r"^[\s;*]*(?P<a>[0-9]{1,3})(?: reps?)? (?:of )?each\b(?! side| leg| arm)", of_each),
    phrase(r"<n>_x_(?P<a>[0-9]{1,3})(?P<b>) (?:of )?everything\b", sets_of),
    phrase(r"(?<!about.)(?<!around.)<n> sets\b(?! of| x|_[0-9])", sets),
    phrase(r"(?<=[,;:]\s)(?P<n>1|one) set\b(?! of)", sets),
    phrase(r"<n> sets of (?=[0-9]{1,3}\s?[a-z][^,;+]*(?:[,;+]|\s(?:&|and)\s[0-9]))", sets),
    phrase(
        r"\b(?:in|as) (?:pairs|twos)\b|^[\s;]*pairs[\s;.,:]*$|\bi go[\s,]{1,3}(?:yo)?u go\b"
        r"|\b(?:with|w/)\s?(?:a |your )?partner\b|^[\s;]*partner\b(?: work\b)?|\b(?:yo)?u go[\s,]{1,3}i go\b",
        says(team=2),
    ),
    phrase(r"\b(?:in )?teams? of <n>", team),
    phrase(r"\bin threes\b", says(team=3)),
    phrase(r"\bin fours\b", says(team=4)),
    phrase(
        r"\bnothing to (?:count|score|record)\b|\bno (?:rush|hurry|(?:clock |time )?pressure|clock)\b",
        says(format=Format.QUALITY),
    ),
    phrase(r"\bonce (?:through|around)\b", says(rounds=1)),
    phrase(r"\b(?:in|within) <minutes>", within),
    phrase(r"\bfor <minutes>", for_so_long),
)


# None of these is over when it is done.
_ON_A_CLOCK = frozenset((Format.AMRAP, Format.INTERVALS))


@cache
def _places() -> dict[str, list[int]]:
    """Places in the table by a word that the phrase needs; one that needs none stands under the empty word."""
    places: dict[str, list[int]] = {}
    for at, one in enumerate(PHRASES):
        for needle in needles(one.source) or ("",):
            places.setdefault(needle, []).append(at)
    return places


def possible(text: str) -> tuple[Phrase, ...]:
    """The phrases that may stand in a text in lower case, in the order of the table."""
    found = {at for needle, places in _places().items() if needle in text for at in places}
    return tuple(PHRASES[at] for at in sorted(found))


def take_phrases(facts: Facts, strip: Strip) -> list[tuple[tuple[int, int], Facts]]:
    """Takes away each phrase that doesn't contradict the facts so far, and adds what it says to them.

    Gives back where another format is told than before, or another rest than that of the clock, and what.
    """
    against = []
    for phrase in possible(strip.text):
        at = 0
        while match := phrase.pattern.search(strip.text, at):
            said = phrase.facts(match)
            if said.get("format") is Format.SETS and "format" in facts:
                said = {name: told for name, told in said.items() if name != "format"}
            if not said or any(facts.get(name, value) != value for name, value in said.items()):
                other_format = facts.get("format") in _ON_A_CLOCK and said.get("format") is Format.FOR_TIME
                if other_format or ("work_s" in facts and said.keys() == {"rest_s"}):
                    against.append((match.span(), said))
                at = max(match.end(), match.start() + 1)
                continue
            strip.blank(*match.span())
            facts.update(said)
    return against
