"""Refusals: what can't be done, and why. Each is worded in `bot.words.refusals`.

Refusal
    NotAMember       the group is not theirs
    NotTheCoach      only the coach may do that
    NotHere          it belongs in the private chat
    UnknownThing     a session, version or score that doesn't exist (or never was theirs)
    StalePress       the button belongs to something that has changed since
    AlreadyDone      the same was done before
    NeedsConsent     nothing about health is stored before consent
"""

from core.errors import Refusal


class NotAMember(Refusal):
    pass


class NotTheCoach(Refusal):
    pass


class NotHere(Refusal):
    pass


class UnknownThing(Refusal):
    pass


class StalePress(Refusal):
    pass


class AlreadyDone(Refusal):
    pass


class NeedsConsent(Refusal):
    pass
