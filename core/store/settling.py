"""What becomes of a letter once its sending has ended, and what is written down of it; no statement of SQL here."""

from collections.abc import Mapping
from datetime import datetime
from typing import Any, Final

from sqlalchemy import RowMapping

from core.store.policy import goes_anew, is_given_up, may_go_again
from core.store.records import LetterState, Outcome, Purpose, Settled

_ENDS = {
    Outcome.SENT: LetterState.SENT,
    Outcome.REFUSED: LetterState.REFUSED,
    Outcome.NOT_SENT: LetterState.WAITING,
    Outcome.NOT_TAKEN: LetterState.WAITING,
    Outcome.UNKNOWN: LetterState.WAITING,
    Outcome.GONE: LetterState.WAITING,
    Outcome.TOO_LATE: LetterState.DROPPED,
}
_VAIN = (Outcome.NOT_TAKEN, Outcome.UNKNOWN)
SEND: Final = "send_message"


def attempt_end(result: Settled, now: datetime) -> dict[str, Any]:
    return {"letter": result.letter_id, "now": now, "how": result.outcome, "why": result.detail}


def settlement(result: Settled, row: RowMapping, now: datetime) -> Mapping[str, Any]:
    state = becomes(result.outcome, row, now)
    is_anew = result.outcome is Outcome.GONE or renews(result, row)
    return {
        "letter": result.letter_id,
        "becomes": state,
        "how": SEND if is_anew else row["method"],
        "message": result.message_id,
        "where": result.address,
        "at": None if state is LetterState.WAITING else now,
        "more": int(result.outcome in _VAIN),
    }


def becomes(outcome: Outcome, row: RowMapping, now: datetime) -> LetterState:
    purpose, method = Purpose(row["purpose"]), row["method"]
    if outcome in _VAIN and is_given_up(max(row["due_at"], row["created_at"]), now):
        return LetterState.UNKNOWN
    if outcome is Outcome.UNKNOWN and not may_go_again(purpose, method):
        return LetterState.UNKNOWN
    if outcome is Outcome.GONE and not goes_anew(purpose, method):
        return LetterState.DROPPED
    return _ENDS[outcome]


def renews(result: Settled, row: RowMapping) -> bool:
    """Whether what was to be an edit made a message of its own."""
    is_new = row["original_message"] != result.message_id or row["original_address"] != result.address
    return (
        result.outcome is Outcome.SENT
        and row["edits_id"] is not None
        and result.message_id is not None
        and is_new
    )


def adoption(original: int, result: Settled) -> Mapping[str, Any]:
    return {"original": original, "message": result.message_id, "where": result.address}
