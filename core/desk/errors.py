"""What the desk declines, and why. Each has words; any other error that gets out of a use case is a bug.

Declined (a core.errors.Refusal)
    NotAMember       the group is not theirs
    NotYours         somebody else was asked
    NotTheCoach      only the coach may do that
    NotHere          it belongs in the private chat
    UnknownThing     a session, version or score that doesn't exist (or never was theirs)
    StalePress       the button belongs to something that has changed since
    Answered         the button is of a question that was answered since
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


class Answered(Declined):
    pass


class AlreadyDone(Declined):
    pass


class Withdrawn(Declined):
    """The session was taken back by its coach."""


class NeedsConsent(Declined):
    pass


class StandingUnknown(BellwetherError):
    """The decision depends on what the platform says of people in groups: look it up, then decide again.

    Nothing is kept of the try. `asked`: a group and a platform user, each. `needed`: where the platform can't be
    asked, nothing is decided; else what is stored counts.
    """

    def __init__(self, asked: frozenset[tuple[int, int]], *, needed: bool) -> None:
        super().__init__(f"standing of {sorted(asked)}")
        self.asked = asked
        self.needed = needed
