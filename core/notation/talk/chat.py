"""Is a message in a chat a score, a session, or just talk? Decided on its words alone."""

import re
from collections.abc import Sequence
from typing import Final, NamedTuple

from core.notation.part_labels import Told, by_parts, find_part
from core.notation.phrases.shapes import PHRASES
from core.notation.text import plain, rows

_LONGEST_SCORE = 160
_NUMBER = r"(?<![0-9.:])[0-9]{1,4}"
# What a session says behind `time cap`, and nothing else.
_CAP = r"\W{1,3}(?:(?:is|of|at)\s)?[0-9]{1,3}(?::00|\s?(?:min(?:ute)?s?\b|'))\W*$"
_CLEAR = re.compile(
    rf"(?<!last )(?<!first )(?<!final ){_NUMBER}\s?(?:full |complete )?(?:rounds?|rds?|rnds?)\b"
    rf"(?!\s?(?:of|for|left|tomorrow|x)\b)"
    rf"|^\W*(?:(?:i|we|all|done|finished|got|did|made|managed|score|today|yes|yay|phew)\W+)*{_NUMBER}\s?\+\s?[0-9]{{1,4}}(?:\s?reps?)?(?![0-9:])"
    rf"|[,.;:!]\s?{_NUMBER}\s?\+\s?[0-9]{{1,4}}\W*$"
    rf"|\b(?:capped|dnf)\b|\btime cap\b(?!{_CAP}).*[0-9]|{_NUMBER}\s?reps? (?:left|to go|remaining)"
    rf"|\b(?:stopped|quit|gave up)\b.{{0,12}}?[0-9]"
    rf"|\b(?:score|result|my time|(?<!for )time|finished|done|took me|got|managed|did)\b\W{{1,3}}(?:it "
    rf"|was |is |in |at |all |mine )*{_NUMBER}(?::[0-5][0-9]|\s?(?:min|sec|reps?|k?cals?\b|calories|rounds?|rds?|kg"
    rf"|lbs?|s\b|m\b))"
)
NOT_COUNTED = re.compile(
    r"\b(?:forgot|didn'?t|did not|failed|wasn'?t able|couldn'?t)(?: to)? (?:(?:keep|take) )?"
    r"(?:count|counting|track|time|note|write)\b|\blost (?:count|track)\b|\bno idea how (?:many|long|much)\b"
    r"|\b(?:forgot|didn'?t start|didn'?t stop|didn'?t use)(?: to start| to stop)? (?:the |my |a )?"
    r"(?:timer|clock|watch)\b"
)
NOT_FINISHED = re.compile(
    r"\bdnf\b|\b(?:did ?n[o']?t|could ?n[o']?t|couldn't|not) (?:quite )?(?:finish(?:ed)?|complete)"
    r"(?=[\W_]*$|\s?[,.;!()]|\s(?:it|the|in|all|today|under|before|with|at|this|that|because|everything|[0-9]))"
)
_UNFINISHED_ALONE = re.compile(rf"^[\W_]*(?:(?:i|sorry|we) )*(?:{NOT_FINISHED.pattern})")
_BARE = re.compile(
    r"^\W*(?:[0-9]{1,3}:[0-9]{2}(?:[:.][0-9]{1,2})?|[0-9]{1,3}\s?(?:min(?:ute)?s?|m"
    r"|')\s?(?:and\s?)?[0-9]{0,2}\s?(?:seconds?|secs?|s|\"|'')?"
    r"|[0-9]{1,2}\.[0-9]{2}|[0-9]{1,4}\s?(?:reps?|k?cals?|calories|seconds?|secs?|s)|[0-9]{1,3}(?:\.[0-9])?\s?(?:kgs?|lbs?"
    r"|kilos?)(?:\s?(?:[0-9]{1,2}\s?x\s?[0-9]{1,3}))?"
    r"|[0-9]{1,4}(?:\s?[,+/]\s?[0-9]{1,4})*)"
    r"(?P<rest>.*)$"
)
_HURTING = (
    r"(?:but |and |though )*(?:my |the )?(?:left |right |lower )?(?:wrist|hand|elbow|shoulder|neck|back|hip|knee|ankle"
    r"|foot|calf|shin|groin)s? (?:(?:is|are|was|got|feels?|felt|really|a bit|a little|quite|now) )*"
    r"(?:hurts?|hurting|sore|painful|aches?|aching|ached)(?: now| again| though| a bit| a little)*"
)
_AFTER = re.compile(
    r"^[\W_]*(?:(?:scaled|rx'?d?|as (?:written|prescribed)|done|finished|today|for me|time|total|unbroken"
    r"|with|at|no pain"
    r"|[0-9]{1,3}\s?(?:kg|lbs?)|phew|wow|tough|hard|easy|that was \w+|so \w+|felt \w+|my \w+ hurts?|wrist"
    rf"|knee|shoulder|back|elbow|{_HURTING})[\W_]*)*$"
)
_TALK = re.compile(
    r"\b(?:see you|meet|meeting|class|tomorrow|tonight|yesterday|later|o'?clock|[0-9]\s?(?:am|pm)|a\.m"
    r"|p\.m|can i|could i|can we|should"
    r"|shall|will|would|what|when|where|which|who|how|why|is it|are we|do we|minutes? late|running late"
    r"|be there|start(?:s|ing)?|join)\b"
)
_ASKS = re.compile(
    r"^\W*(?:(?:hi|hey|so|and|but|ok|sorry|wait)\W+)*(?:what(?:'?s)?|when|where|which|who|how|why|can|could|should|shall"
    r"|may|will|would|is|are|am|do|does|was|did(?=\s(?:i|we|you|he|she|they|it|that|this|any\w+|some\w+)\b))\s"
)
_TO_DO = re.compile(
    r"(?:^|[\s,;:*\-])[0-9]{1,4}(?:\s?[x\-/]\s?[0-9]{1,4})?(?:\s?(?:/side|kg|lb|m|s|cal))?\s+(?!rounds?\b"
    r"|rds?\b|reps?\b|min|sec|kg\b|lbs?\b|and\b|plus\b|left\b|of\b)[a-z]{3,}"
)
_TOLD = re.compile(r"^\W*(?:i |we )?(?:did|got|made|finished|done|managed)\b")
_SO_MANY = re.compile(_TOLD.pattern + r"\s(?:only |just |about |like )*[0-9]+\b(?!:)")


def is_like_a_score(text: str) -> bool:
    """Whether a message reads like a result: `7+12`, `8:43 scaled`; not `see you at 8:30` or a question."""
    words = plain(text).lower()
    if len(words) > _LONGEST_SCORE:
        return False
    if any(_are_scores(told) for told in by_parts(words)):
        return True
    named = find_part(words)
    return _is_one_score(named[1] if named else words)


def _are_scores(told: Sequence[Told]) -> bool:
    """Of each part named: its score, or beside a score of another what was done (`5x6 @ 32 kg`, `done`)."""
    found = [_is_one_score(one.words.strip(" ,;.")) for one in told]
    beside = not any(_TALK.search(one.words) or one.words.rstrip().endswith("?") for one in told)
    return all(found) or (any(found) and beside and all(one.part for one in told))


def _is_one_score(words: str) -> bool:
    if not words or len(words) > _LONGEST_SCORE or words.rstrip(" !").endswith("?"):
        return False
    if NOT_COUNTED.search(words):
        return True
    if _TALK.search(words):
        return False
    if _CLEAR.search(words) or _UNFINISHED_ALONE.match(words):
        return True
    bare = _BARE.match(words)
    return bool(bare and _AFTER.match(bare["rest"]))


def begins_with_so_many_done(text: str) -> bool:
    """`Did 3 of em. My legs are shaking`: a count of what was done, whatever is told behind it."""
    return bool(_SO_MANY.match(plain(text).lower()))


_OTHER_WORK = re.compile(
    r"\binstead of (?:(?:the|this|that|todays?|today's|your|our) )*(?:session|workout|training|class)\b"
    r"|\bdid (?:my own thing|something else|something different|a different (?:session|workout))\b"
)


def tells_other_work(text: str) -> bool:
    """`Ran 10k instead of the session, 47:50`: whatever was done, it is no score of that."""
    return bool(_OTHER_WORK.search(plain(text).replace("\u2019", "'").lower()))


_OF_KIT = re.compile(
    r"\bnew\b(?! (?:pb|pr|best|record|max|rm|1rm|high))|\b(?:bought|sold|selling|borrowed|owns?)\b"
    r"|\b(?:i|we)(?:'?ve| have)(?: only| just| now)?(?: got)? (?:an?|two|only)\b|\bgot an? (?=[0-9])"
)


def tells_of_kit(text: str) -> bool:
    """`I have a 10`, `also new 20 kg kb`: a weight that somebody has is none that they lifted."""
    return bool(_OF_KIT.search(plain(text).replace("\u2019", "'").lower()))


def is_beside_a_score(text: str) -> bool:
    """Whether somebody who was asked about their score says something else: a question, with no number in it."""
    words = plain(text).lower().strip()
    return not re.search(r"[0-9]", words) and (words.rstrip(" !").endswith("?") or bool(_ASKS.match(words)))


def tells_what_was_done(text: str) -> bool:
    """`Did 3 rounds, 15 squats`; a question, or what is told of what was, is no session either."""
    words = plain(text).lower().strip()
    return bool(_TOLD.search(words)) or words.endswith("?")


def is_like_a_session(text: str) -> bool:
    """Whether a message reads like a session to post: a format, and things to do beside it."""
    typed = [row.text.lower() for row in rows(text[:10_000]) if row.text.strip()]
    left = "\n".join(typed)[:4000]
    named = False
    for phrase in PHRASES:
        match = phrase.pattern.search(left)
        if match and "format" in phrase.facts(match):
            named = True
            left = left[: match.start()] + ";" * (match.end() - match.start()) + left[match.end() :]
    things = len(_TO_DO.findall(left))
    return named and not _TOLD.search(left) and things >= (1 if len(typed) > 1 else 2)


_IS_ASKED: Final = re.compile(
    r"^\W*(?:which|what|whats|what's|how|why|when|where|who|do|does|can|could|should|is|are|am|will|would)\b|\w\?\s*$"
)


def asks(text: str) -> bool:
    """Whether it is put as a question."""
    return bool(_IS_ASKED.search(text.casefold()))


_RESTS = re.compile(
    r"\b(?:rest(?:ing)?|recovery|free) days?\b|\bdays? off\b|\bno (?:training|sessions?|workouts?)\b"
    r"|\b(?:off|rest) (?:today|tomorrow)\b|\b(?:today|tomorrow|[a-z]+day)(?:'s| is)? (?:off|rest)\b",
    re.IGNORECASE,
)


def calls_a_rest_day(text: str) -> bool:
    """Whether one line says that there is no session on a day; a live class is another matter."""
    return "\n" not in text.strip() and "class" not in text.lower() and bool(_RESTS.search(text))


_DAY: Final = r"(?:mon|tues?|wed(?:nes)?|thu(?:r|rs)?|fri|sat(?:ur)?|sun)(?:day)?s?"
_MINUTES_OF_DAYS: Final = re.compile(
    rf"^\W*(?:on )?(?P<days>{_DAY}(?:\s*(?:,|and|&|/|\+)\s*(?:on )?{_DAY})+)\W+(?:\w+ ){{0,4}}"
    r"(?P<minutes>[0-9]{1,3}) ?(?:m|mins?|minutes)\b"
)


class MinutesOfDays(NamedTuple):
    """`days`: as they are named."""

    days: tuple[str, ...]
    minutes: int


def minutes_of_days(text: str) -> MinutesOfDays | None:
    """`Tues and thurs 20 min`: so much time on several days is no score of any."""
    found = _MINUTES_OF_DAYS.match(plain(text).lower())
    return found and MinutesOfDays(tuple(re.findall(_DAY, found["days"])), int(found["minutes"]))
