"""What goes first, and what may go twice. Pure."""

from collections.abc import Mapping

from core.store.records import Purpose

# Answers to a waiting person go before bulk. Lower goes first.
PRIORITIES: Mapping[Purpose, int] = {purpose: rank for rank, purpose in enumerate(Purpose)}


def may_go_again(purpose: Purpose, method: str, resends: int) -> bool:
    """Whether a letter with an unknown end is sent again.

    Edits always, since a repeated edit shows nothing new; bulk and tap answers never; everything else once.
    """
    if method.startswith("edit"):
        return True
    return purpose not in {Purpose.BULK, Purpose.TAP} and resends < 1
