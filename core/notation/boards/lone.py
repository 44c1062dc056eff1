"""A row that is nothing but a number: `15 min`, `x3`, `21, 15, 9`."""

import re

from core.notation.phrases.aims import Facts

_LONE_TIME = re.compile(
    r"^[\W_]*(?:time|duration|clock)?\s?:?\s?([0-9]{1,3})\s?(?:min(?:ute)?s?|'|:00)(?: on the clock)?[\W_]*$"
)
_LONE_ROUNDS = re.compile(
    r"^[\W_]*(?:x\s?(?P<n>[1-9][0-9]?)|(?P<m>[1-9][0-9]?)\s?x)(?:\s(?:times|through))?[\W_]*$"
)
_LONE_SCHEME = re.compile(r"^[\W_]*([0-9]{1,3}(?:\s?[,/]\s?[0-9]{1,3}){2,20})(?: reps?)?(?: of)?[\W_]*$")


def read_lone(text: str) -> Facts:
    """What such a row says of its block; nothing for every other row."""
    if time := _LONE_TIME.match(text):
        return {"minutes": float(time[1])}
    if rounds := _LONE_ROUNDS.match(text):
        return {"rounds": int(rounds["n"] or rounds["m"])}
    if scheme := _LONE_SCHEME.match(text):
        return {"scheme": tuple(int(each) for each in re.findall("[0-9]+", scheme[1]))}
    return {}
