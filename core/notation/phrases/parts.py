"""Ready-made parts of the shapes of phrases: numbers, durations, and the words around them."""

from core.notation.quantities import ANY_NUMBER_WORD, COUNT, DURATION, NUMBER

# A bare number counts minutes, but only where no thing to count follows (`AMRAP: 12 burpees`).
_BARE_MINUTES = (
    r"[0-9]{1,3}(?:\.[0-9])?m?(?![0-9a-z/@%]|\.(?=\S)|:[0-9]|-[0-9a-z]"
    r"|\s+(?!of\b|w/|with\b|for\b|in\b|rest|then\b|cap|tc\b|aim|target|goal|as\b|you go\b"
    r"|ladder\b|alternating(?:\s(?:minutes|stations|movements|exercises))?\s*$|alternating rounds"
    r"|partners?\b|[0-9]{1,3}\s?[a-z])[a-z0-9@])"
)

PARTS = {
    "n": rf"(?<![0-9.:/\-])(?P<n>{COUNT}|\b(?:{ANY_NUMBER_WORD})\b)",
    "minutes": rf"(?P<time>{DURATION}|{_BARE_MINUTES})",
    "dur": rf"(?<![0-9.:\-])(?P<time>{DURATION})",
    "work": rf"(?<![0-9.\-])(?<![0-9]:)(?<!min\s-\s)(?P<work>{DURATION}|[0-9]{{1,3}})",
    "off": rf":?(?P<off>{DURATION}|[0-9]{{1,3}})",
    "lo": rf"(?P<lo>{NUMBER})",
    "hi": rf"(?P<hi>{NUMBER})",
    "lotime": rf"(?P<lo>{DURATION}|{NUMBER}(?=\s?(?:-|to)))",
    "hitime": rf"(?P<hi>{DURATION})",
    "scheme": rf"(?<![0-9./\-])(?P<s>{COUNT}(?:\s?-\s?{COUNT}){{2,30}})"
    r"(?![0-9./]|-[0-9x]|\s?%|\s?(?:k?m|min(?:ute)?s?|sec(?:ond)?s?|s)\b|')",
    "listed": r"(?:^|(?<=[a-z:;\-][\s:;,]))[\s;:]*"
    r"(?P<s>[0-9]{1,3}(?:,[0-9]{1,3}){2,30}|[0-9]{1,3}(?:,\s[0-9]{1,3}){3,30}"
    r"|[0-9]{1,3}(?:\s[0-9]{1,3}){2,30}(?=\s[a-z]))(?![0-9./:,]|-[0-9x]|\s?(?:kg|lb|%))",
    "pause": r"(?:(?:(?:easy|slow|active|passive|full|walk(?:ing)?|jog(?:ging)?) ){0,2}"
    r"(?:rest(?:ing)?|rec(?:ov(?:ery)?)?|break)|rst|recover|pause|break|breather"
    r"|(?:(?:easy|slow) )?(?:jog|walk)(?=\s(?:between|after|b/w|btw)))",
    "on": r"(?:on|hard|fast|sprint|all[ -]out|(?:of )?(?:work(?:ing)?|exercises?|effort|action|activity|moving)"
    r"|(?:on |of |for |at )?(?:each|every|per) (?:exercise|move|movement|station|one))",
    "rests": r"(?:off|easy|slow"
    r"|(?:to |for the )?(?:change(?: ?over)?|switch|swap|transition|move on|breathe|recover|rest)"
    r"|(?:of )?(?:rest(?:ing)?|pause|break|recovery|walking))",
    "joint": r"[\s/,:\-]{0,3}(?:(?:and|with|then|followed by|plus|&|\+)\s)?",
    "to": r"\s?(?:-|to|or)\s?",
    "is": r"[\s:,=\-]{0,4}",
    # `3rd` is an ordinal
    "rounds": r"(?:(?:(?:slow|easy|steady|quick|hard|full|big|good|honest|more) )?rounds?"
    r"|(?<!3)rds?(?! (?:min|station))|(?<=3)rds|rnds?|times (?:a?round|through)|turns|circuits"
    r"|lots(?: of)?)\b",
    "amrap": r"(?:amraps?|as many (?:rounds|reps|sets)(?:\s?(?:and|or|&|/|\+)\s?(?:reps|rounds))? as "
    r"(?:possible|you can)|max(?:imum)? rounds)",
    "fast": r"(?:for (?:the )?time|against the clock|as fast as (?:possible|you can)|afap\b)",
    "of": r"(?:\s?\bof\b)?",
    "between": r"(?:\s(?:in\s)?(?:between|after|aftr|b/w|bw|bt?wn?|betw)\b(?:\s(?:each|every|them|the|all|your)\b)?"
    r"(?:\s(?:rounds?|rds?|sets?|series?|efforts?|reps?|intervals?|pieces?|laps?|runs?|exercises?|stations?|pairs?|supersets?"
    r"|one|two|three|tries|arms|legs|sides|[a-h][1-9])\b)?"
    r"|\s(?:each|every|per) (?:round|set|effort|interval)\b)?",
    "aim": r"\b(?:aim(?:ing)?|target|goal)\b(?:\s(?:is|score|time|for|about|around|to get)\b){0,3}",
    "hope": r"\b(?:expect|hope|pleased|happy|want)\b[a-z \-]{0,30}?"
    r"\b(?:need|take|see|get|reach|make|finish in|be done in)\b(?: about| around)?",
    "below": r"(?P<side>sub|under|below|less than|faster than|at most|up to)",
    "above": r"(?P<side>at least|more than|over|above)",
}
