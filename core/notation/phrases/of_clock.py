"""What coaches type around the lines to say what the clock does: intervals, rests, caps, as many rounds as possible.

A row is a shape and what it says, as facts named like the fields of a `Block`. In a shape a space is some space or a
hyphen, `_` the same or nothing, and `<word>` one of `PARTS`. Of two phrasings the longer stands first.
"""

from core.notation.phrases.facts import (
    amrap,
    amrap_again,
    at_each,
    bare_on_off_for,
    bare_on_off_times,
    cap,
    every,
    every_for,
    every_times,
    minutely,
    minutely_for,
    minutely_times,
    on_off,
    on_off_times,
    rest,
    rest_between,
    rest_in_short,
    rounds_of_time,
    says,
    tabata,
    timed_on_off_times,
    within,
    work,
)
from core.notation.phrases.phrasing import Phrase, phrase
from core.sessions.values import Format

OF_CLOCK: tuple[Phrase, ...] = (
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
    phrase(r"\be(?P<every>[1-9]?)m(?:om)?(?:\b|(?=[0-9]))<is>(?:for |of |x )?<minutes>", minutely_for),
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
    phrase(r"\b(?:one|1) (?:set |rep |lift )?every <work>(?![0-9.])", every),
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
    phrase(
        r"<dur> (?:at|on) each\b(?! (?:of|sides?|legs?|arms?|foot|feet|hands?|ways?|directions?))", at_each
    ),
    phrase(r"(?:^|(?<=[:,;.]))[\s;*\-]*<dur> each(?=[\s;:]*$|,_<n>_<rounds>)", at_each),
    phrase(r"<dur> each of\b", work),
    phrase(r"<n>_x?_<rounds> of <dur>(?=\s?[:,;.(]|\s*$)", rounds_of_time),
    phrase(r"^[\s;*]*work(?:ing)?(?: time)?<is><dur>", work),
    phrase(r"^[\s;*]*<work>\s?/\s?<off><is>(?:for )?<dur>", bare_on_off_for),
    phrase(r"<n>_<rounds>(?: of)?[\s,:@]{1,3}<work>\s?/\s?<off>(?=[\s\-:;,.]|$)", bare_on_off_times),
    phrase(
        r"^[\s;*]*<work>\s?/\s?<off>_x_<n>(?: <rounds>| sets\b| times\b)?(?![0-9.]|_[a-z])",
        bare_on_off_times,
    ),
    phrase(r"^[\s;*]*<work>\s?/\s?<off>[\s,;:]{1,3}<n>_<rounds>", bare_on_off_times),
    phrase(r"<n>_x_\(_<work>\s?/\s?<off>_\)", bare_on_off_times),
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
)
