"""Words for a session that its coach posted, and withdraws."""

from datetime import date

from bot.words.text import fill
from bot.words.wording import Button, Row, Worded, wording
from core.desk.coaching.commands import WithdrawSession
from core.desk.commands import DiscardSession, MyVersion
from core.desk.sessions.says import (
    AskWithdraw,
    NothingOfDay,
    PostWithdrawn,
    SessionKept,
    SessionWithdrawn,
    WasWithdrawn,
)


@wording("en", NothingOfDay)
def nothing_of_day(_: NothingOfDay) -> Worded:
    return Worded(
        "I know no session of that day, so nothing has changed. <i>what's scheduled?</i> tells what there is."
    )


@wording("en", AskWithdraw)
def ask_withdraw(said: AskWithdraw) -> Worded:
    text = fill(
        "Shall I withdraw <b>{title}</b> from {group}? Its message there will say so, and whoever has a version of it "
        "hears it from me. Scores that were told stay.",
        title=named(said.title, said.day),
        group=said.group,
    )
    if said.changed:
        text += " It took the place of an earlier post of that day."
    keep = Button("No, keep it", WithdrawSession(session=said.session_id, how="keep"))
    return Worded(text, (*yes_rows(said), *draft_rows(said), (keep,)))


def draft_rows(said: AskWithdraw) -> tuple[Row, ...]:
    """Who has a draft in hand may mean that one."""
    if said.draft is None:
        return ()
    session, revision = said.draft
    return ((Button("No, discard my draft", DiscardSession(session=session, revision=revision)),),)


def yes_rows(said: AskWithdraw) -> tuple[Row, ...]:
    one = WithdrawSession(session=said.session_id, how="one")
    if not said.changed:
        return ((Button("Yes, withdraw it", one),),)
    both = WithdrawSession(session=said.session_id, how="all")
    return (Button("Yes, the earlier one counts again", one),), (
        Button("Yes, and the earlier one too", both),
    )


def named(title: str | None, day: date) -> str:
    return title or f"{day:%A, %-d %B}"


@wording("en", SessionKept)
def session_kept(_: SessionKept) -> Worded:
    return Worded("Good, it stays as it is.")


@wording("en", WasWithdrawn)
def was_withdrawn(said: WasWithdrawn) -> Worded:
    again = " The earlier post counts again." if said.again else ""
    text = fill("Withdrawn from {group}.", group=said.group)
    return Worded(f"{text}{again} Send me another session whenever you like.")


@wording("en", PostWithdrawn)
def post_withdrawn(said: PostWithdrawn) -> Worded:
    text = "<b>{title}</b>\n\nWithdrawn: this session doesn't count any more. A score you told for it stays."
    return Worded(fill(text, title=named(said.title, said.day)))


@wording("en", SessionWithdrawn)
def session_withdrawn(said: SessionWithdrawn) -> Worded:
    text = fill(
        "Your coach has withdrawn <b>{title}</b> from {group}, so leave your version of it.",
        title=named(said.title, said.day),
        group=said.group,
    )
    if said.again is None:
        return Worded(text)
    again = " The earlier session counts again."
    return Worded(text + again, ((Button("My version", MyVersion(session=said.again)),),))
