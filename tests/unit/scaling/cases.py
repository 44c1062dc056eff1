"""How a case of a coach is told: the line, the athlete, the line as they do it, and why."""

from typing import NamedTuple

from bot.words.reasons import reason_words
from bot.words.versions import what_words
from core.athletes.values import Profile
from core.scaling.values import Because
from tests.unit.scaling.people import lines

TWELVE_MINUTES = "12 min AMRAP\n"
A_MAN = {"sex": "male", "mass": 80}


class Case(NamedTuple):
    """`what` is what the athlete reads of the session's first line; `says` is in the sentence that tells why."""

    text: str
    who: Profile
    what: str
    because: Because
    says: str = ""

    def check(self) -> None:
        line = lines(self.text, self.who)[0]
        done, why = what_words(line, self.who.units), reason_words(line, self.who.units)
        assert (done, line.reason.because) == (self.what, self.because), (done, line.reason.because)
        assert self.says in why, why
        assert bool(why) == (self.because is not Because.AS_WRITTEN)
