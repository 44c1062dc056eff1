"""What coaches type around the lines to say how often: rounds, sets, schemes and ladders, and done for time.

A row is a shape and what it says, as facts named like the fields of a `Block`. In a shape a space is some space or a
hyphen, `_` the same or nothing, and `<word>` one of `PARTS`. Of two phrasings the longer stands first.
"""

from core.notation.phrases.facts import (
    climbing,
    each_round_for_time,
    for_so_long,
    ladder,
    listed,
    of_all_below,
    rounds,
    rounds_for_time,
    says,
    scheme,
    sets,
    sets_of,
    team,
    times_of_a_chain,
    tries,
    within,
)
from core.notation.phrases.phrasing import Phrase, phrase
from core.sessions.values import Format

OF_ROUNDS: tuple[Phrase, ...] = (
    # as fast as possible
    phrase(r"<n>_x?_<rounds>[,:]?_each(?: one)? <fast>", each_round_for_time),
    phrase(r"\beach(?: (?:one|piece|part))?(?: is)? <fast>", says(format=Format.FOR_TIME, apart=True)),
    phrase(r"<n>_x?_<rounds><is>(?:each )?(?:round )?(?:<fast>|ft\b|f\.t\.)<of>", rounds_for_time),
    phrase(r"<n>_rft\b<of>", rounds_for_time),
    phrase(r"<fast><is><n>_<rounds><of>", rounds_for_time),
    phrase(r"\btt\b(?=[\s;]*(?:[.,:;!)]|$))", says(format=Format.FOR_TIME)),
    phrase(r"^[\s;*]*ft\b(?=[\s:;,]|$)|\bf\.t\b\.?", says(format=Format.FOR_TIME)),
    phrase(
        r"(?:(?<=[a-z;]\s)|(?<=-[0-9]\s)|(?<=[\-/][0-9]{2}\s))ft\b(?=\s?[:;,.]|\s*$)",
        says(format=Format.FOR_TIME),
    ),
    phrase(
        r"\b(?:<fast>|rft\b|(?<!each\s)(?<!every\s)(?<!any\s)time it\b(?! if)|best time\b|(?:write|note) the time\b)"
        r"(?: complete)?<of>",
        says(format=Format.FOR_TIME),
    ),
    # schemes and rounds
    phrase(
        r"(?:\b(?:and|then|keep) )?\badd(?:ing)? <n>(?: (?:more|reps?|of each|to each|more of each|rep of each)){0,2}"
        r" (?:each|every|per|a) (?:round|time|set)\b(?: (?:until|till|for as long) [a-z ]{3,30}$)?",
        climbing,
    ),
    phrase(r"(?<![0-9.\-])(?P<a>[0-9]{1,3})(?P<b>)\s?-\s?(?P<z>[0-9]{1,3}) (?:rep )?ladder\b<of>", ladder),
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
    phrase(r"(?:^[\s;*]*|(?<=[,;:]\s))<n> times(?: each(?: side| leg| arm| way)?)?(?=[\s;.,]*$)", rounds),
    phrase(r"(?<!x.)(?<!x)<n> (?:attempts|tries|goes|gos)\b", tries),
    phrase(r"^[\s;*]*<n>_x: ?(?=[0-9])", rounds),
    phrase(r"^[\s;*,.]*x_<n>[\s;,.]*$", rounds),
    phrase(
        r"<n> sets of (?P<a>[0-9]{1,3})(?:\s?-\s?(?P<b>[0-9]{1,3}))?(?: reps?| each)?(?:[\s:]*$|_:(?=\s))",
        sets_of,
    ),
    phrase(
        r"(?:^|(?<=[,;:]\s))[\s;*]*(?P<a>[0-9]{1,3})(?: reps?)? (?:of )?each\b"
        r"(?! (?:sides?|legs?|arms?|ways?|foot|feet|hands?|directions?|other|exercise|station))",
        of_all_below,
    ),
    phrase(r"<n>_x_(?P<a>[0-9]{1,3})(?P<b>) (?:of )?(?:everything\b|each[\s:;]*$)", sets_of),
    phrase(r"(?<!about.)(?<!around.)<n> sets\b(?! of| x|_[0-9])", sets),
    phrase(r"(?<=[,;:]\s)(?P<n>1|one) set\b(?! of)", sets),
    phrase(r"<n> sets (?:of )?(?=[0-9]{1,3}\s?[a-z][^,;+]*(?:[,;+]|\s(?:&|and)\s[0-9]))", sets),
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
