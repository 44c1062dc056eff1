"""`bellwether read session`, `read score` and `read message`: what the bot understands of typed words."""

from collections.abc import Iterator
from pathlib import Path
from typing import Annotated, Any, Literal, get_args

import typer

from bot.commands.console import AsJson, print_json, print_text
from bot.commands.given import text_of
from bot.commands.roster import read_roster
from bot.words.en.talk.acts import ask_between
from bot.words.en.talk.told import in_words
from core.desk.reference import catalogue
from core.desk.sessions.trial import (
    Context,
    Message,
    OpenQuestion,
    Understood,
    document,
    message_in,
    numbered_notes,
    score_in,
    session_in,
    session_in_words,
)
from core.notation.values import Corrected, NotUnderstood, ReadSession
from core.scores.values import ReadScore
from core.sessions.values import Block, Line


def _examples(*lines: str) -> str:
    return "\n".join(["\b", "Examples:", *(f"  bellwether read {line}" for line in lines)])


read = typer.Typer(help="Read typed words the way the bot does.", no_args_is_help=True)

Role = Literal["athlete", "coach"]
QUESTIONS = tuple(name for name in get_args(OpenQuestion) if name)
Questions = Literal[
    "equipment", "limits", "weight", "ability", "pain", "effort", "consent", "screening", "score", "zone"
]


@read.command("session", epilog=_examples("session SESSION.txt", "session - < SESSION.txt"))
def read_session(
    file: Annotated[
        str, typer.Argument(metavar="FILE|-", help="The session as the coach wrote it; - is standard input.")
    ],
    as_json: AsJson = False,
) -> None:
    """Read a session, and name what isn't understood at its place."""
    text = text_of(file)
    found = session_in(text)
    if as_json:
        print_json(session_document(found))
    else:
        print_text("\n".join(_session_lines(text, found)))
        _end_unless(understood=found.session is not None)


# A score may begin with a dash (`- 7+12`): typer would take it for an option.
@read.command(
    "score",
    context_settings={"ignore_unknown_options": True},
    epilog=_examples("score '7+12' --for SESSION.txt", "score '8:31, light one' --for SESSION.txt --json"),
)
def read_score(
    text: Annotated[str, typer.Argument(metavar="TEXT", help="What the athlete says.")],
    session: Annotated[str, typer.Option("--for", metavar="SESSION.txt", help="The session it is for.")],
    block: Annotated[int | None, typer.Option(metavar="N", help="Which block, from 1.")] = None,
    as_json: AsJson = False,
) -> None:
    """Read a score in an athlete's words, or ask.

    If it isn't sure, it prints the question to ask, and ends with 2.
    """
    found = score_in(text, text_of(session), block)
    if as_json:
        print_json(score_document(found))
    else:
        print_text(_score_line(found))
        _end_unless(understood=found.sure)


# A message may begin with a dash too; `-` alone is standard input.
@read.command(
    "message",
    context_settings={"ignore_unknown_options": True},
    epilog=_examples("message 'my left knee hurts'", "message 'who needs me?' --role coach"),
)
def read_message(
    text: Annotated[str, typer.Argument(metavar="TEXT|-", help="What was written; - is standard input.")],
    role: Annotated[Role, typer.Option(help="Who wrote it.")] = "athlete",
    question: Annotated[
        Questions | None, typer.Option(metavar="NAME", help=f"What was asked last: {', '.join(QUESTIONS)}.")
    ] = None,
    session: Annotated[
        str | None, typer.Option("--for", metavar="SESSION.txt", help="Today's session.")
    ] = None,
    roster: Annotated[
        Path | None, typer.Option(metavar="ROSTER.toml", help="The group's people, so that names are known.")
    ] = None,
    as_json: AsJson = False,
) -> None:
    """Read all that a message tells, asks or wishes."""
    people = tuple(one.name for one in read_roster(roster, catalogue())) if roster else None
    message = Message(text=text_of(text) if text == "-" else text, role=role)
    context = Context(question=question or "", people=people)
    found = message_in(message, context, text_of(session) if session else None)
    if as_json:
        print_json(message_document(found))
    else:
        print_text("\n".join(_message_lines(found)))
        if not found.acts and _as_a_coach(message, context).acts:
            print_text("From a coach it would be understood: say --role coach.")
        _end_unless(understood=bool(found.acts or found.between))


def _as_a_coach(message: Message, context: Context) -> Understood:
    return message_in(message.model_copy(update={"role": "coach"}), context, None)


def _end_unless(*, understood: bool) -> None:
    """What is told to people ends with 2 where nothing was understood; a document says so itself."""
    if not understood:
        raise typer.Exit(2)


def session_document(found: ReadSession) -> dict[str, Any]:
    """The JSON form of a session that was read; without a session, its fields are empty."""
    session = found.session
    return {
        "title": session.title if session else None,
        "date": session.date if session else None,
        "blocks": [_block(block) for block in session.blocks] if session else [],
        "corrected": [one.model_dump() for one in found.corrected],
        "not_understood": [one.model_dump() for one in found.unread],
    }


def _block(block: Block) -> dict[str, Any]:
    lines = {name: [_line(line) for line in getattr(block, name)] for name in ("buy_in", "cash_out", "lines")}
    return block.model_dump() | lines


def _line(line: Line) -> dict[str, Any]:
    rule = line.load_rule.model_dump(exclude_none=True) if line.load_rule else None
    return line.model_dump() | {"load_rule": rule}


def score_document(found: ReadScore) -> dict[str, Any]:
    """The JSON form of a score that was read."""
    empty = dict.fromkeys(("value", "unit", "rounds", "reps", "seconds", "load_kg"))
    score = (
        found.score.model_dump()
        if found.score
        else empty | {"capped": False, "scaled": False, "note": None, "pain": None}
    )
    return score | {"block": found.block + 1, "sure": found.sure, "ask": found.ask, "doubt": found.doubt}


def message_document(found: Understood) -> dict[str, Any]:
    """The JSON form of a message that was understood."""
    return {
        "acts": [document(act) for act in found.acts],
        "unread": list(found.unread),
        "ask": ask_between(found.between),
    }


def _message_lines(found: Understood) -> Iterator[str]:
    if not (found.acts or found.unread):
        yield "There is nothing in it to read."
    yield from (in_words(act) for act in found.acts)
    yield from (f"not understood: {words}" for words in found.unread)
    if question := ask_between(found.between):
        yield question


def _session_lines(text: str, found: ReadSession) -> Iterator[str]:
    if not text.strip():
        yield "There is nothing in it to read."
        return
    if found.session:
        yield session_in_words(found.session)
    for corrected in found.corrected:
        yield _corrected(corrected)
    for note in numbered_notes(found.session) if found.session else ():
        yield f"kept as a note, and not counted with: {note}"
    for problem in found.not_understood:
        yield _unscored(problem) if problem.looks_like == "score" else _problem(problem)


def _unscored(one: NotUnderstood) -> str:
    return f"line {one.line}: done without a clock; if the time counts, say {one.guess}: {one.text}"


def _corrected(one: Corrected) -> str:
    return f"line {one.line}: read {one.text!r} as {one.read_as}"


def _problem(one: NotUnderstood) -> str:
    return f"line {one.line}, column {one.column}: {problem_of(one)}"


def problem_of(one: NotUnderstood) -> str:
    """What is wrong with something of a session; what was taken is not called unread."""
    guess = f" (did you mean {one.guess}?)" if one.guess else ""
    return f"{'taken, but doubtful' if one.is_taken else 'not understood'}: {one.text}{guess}"


def _score_line(found: ReadScore) -> str:
    if found.ask or found.score is None:
        return found.ask or ""
    score = found.score
    remarks = (
        score.in_words(),
        "scaled" if score.scaled else "",
        f"pain: {score.pain}" if score.pain else "",
        f"note: {score.note}" if score.note else "",
    )
    return "; ".join(remark for remark in remarks if remark)
