"""What the desk declines, and why. Each has words; any other error that gets out of a use case is a bug.

Declined (a core.errors.Refusal)
    NotAMember       the group is not theirs
    NotYours         somebody else was asked
    NotTheCoach      only the coach may do that
    NotHere          it belongs in the private chat
    UnknownThing     a session, version or score that doesn't exist (or never was theirs)
    StalePress       the button belongs to something that has changed since
    AlreadyDone      the same was done before
    NeedsConsent     nothing about health is stored before consent
"""

from core.errors import BellwetherError, Refusal


class Declined(Refusal):
    """Base of what is answered with words."""


class NotAMember(Declined):
    pass


class NotYours(Declined):
    pass


class NotTheCoach(Declined):
    pass


class NotHere(Declined):
    pass


class UnknownThing(Declined):
    pass


class StalePress(Declined):
    pass


class AlreadyDone(Declined):
    pass


class Withdrawn(Declined):
    """The session was taken back by its coach."""


class NeedsConsent(Declined):
    pass


class StandingUnknown(BellwetherError):
    """The decision depends on the visitor's standing in a group: look it up, then decide again. Nothing is kept."""

    def __init__(self, group: int) -> None:
        super().__init__(f"standing in group {group}")
        self.group = group
