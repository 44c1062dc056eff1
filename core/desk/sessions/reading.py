"""A coach's text beside what was understood of it: the board, and the lines kept as notes."""

from collections.abc import Iterable

from core.desk.sessions.says import Marked, Unread
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_rows, write_session
from core.notation.values import NotUnderstood
from core.sessions.values import Block, BlockKind, Session
from core.store.records import Group, SessionRecord

_WORK = frozenset(("movement", "work"))


def unread_lines(
    text: str, not_understood: Iterable[NotUnderstood], session: Session | None = None
) -> tuple[Unread, ...]:
    """Each such line once, as the coach wrote it, with the first guess there is; without what was read of it."""
    written = [line.written for block in session.blocks for line in block.lines] if session else []
    by_line: dict[int, list[NotUnderstood]] = {}
    for one in not_understood:
        by_line.setdefault(one.line, []).append(one)
    lines = text.splitlines()
    told: list[Unread] = []
    for line, found in by_line.items():
        work = [one for one in found if one.looks_like in _WORK]
        told.append(_unread(work or found, left_of(lines[line - 1].strip(), found[0].text, written)))
    return tuple(told)


def _unread(found: list[NotUnderstood], text: str) -> Unread:
    """What is unread of one line, be it work or words."""
    return Unread(
        line=found[0].line,
        text=text,
        guess=next((one.guess for one in found if one.guess), None),
        is_work=found[0].looks_like in _WORK,
        block=found[0].block,
        after=next((one.after for one in found if one.after is not None), None),
    )


def left_of(line: str, unread: str, written: Iterable[str]) -> str:
    """What stands behind all that was read in front of what wasn't; else the whole line."""
    before = line[: max(line.find(unread), 0)]
    ends = [before.find(one) + len(one) for one in written if one and one in before]
    return line[max(ends) :].lstrip(" ,;+&") if ends else line


def with_notes(record: SessionRecord, group: Group) -> tuple[Session, tuple[str, ...]]:
    """The session with lines of the coach's text that are shown as they stand at their block; those of none."""
    read = read_session(record.text, catalogue(), group.units)
    unread = unread_lines(record.text, read.unread, read.session)
    blocks = tuple(
        noted(block, [one.text for one in unread if one.block == number])
        for number, block in enumerate(record.session.blocks, 1)
    )
    to_all = tuple(one.text for one in unread if one.block is None)
    return record.session.model_copy(update={"blocks": blocks}), to_all


def noted(block: Block, lines: list[str]) -> Block:
    """The block with these lines beside its own note."""
    if not lines:
        return block
    words = [*([block.notes] if block.notes else []), *lines]
    ended = [one if one.endswith((".", "!", "?")) else f"{one}." for one in words[:-1]]
    return block.model_copy(update={"notes": " ".join([*ended, words[-1]])})


def board_of(session: Session, units: MassUnit) -> str:
    """The session in board words. Its title stands above it, and a lone main block needs no heading."""
    text = write_session(session.model_copy(update={"title": None, "date": None}), units)
    return text.removeprefix("Main\n") if len(session.blocks) == 1 else text


def marked_board(session: Session, unread: Iterable[Unread], units: MassUnit) -> tuple[Marked, ...]:
    """The same with work that wasn't read, in the coach's words, at its place between the lines."""
    untitled = session.model_copy(update={"title": None, "date": None})
    rows = write_rows(untitled, units)[1 if is_lone_main(session) else 0 :]
    marks = [one for one in unread if one.is_work and one.block is not None and one.after is not None]
    told: list[Marked] = []
    for row in rows:
        told += [_marked(one) for one in marks if row.line == 1 and (one.block, one.after) == (row.block, 0)]
        told.append(Marked(text=row.text))
        told += [
            _marked(one) for one in marks if row.line and (one.block, one.after) == (row.block, row.line)
        ]
    return tuple(told)


def _marked(one: Unread) -> Marked:
    return Marked(text=one.text, unread=True)


def is_lone_main(session: Session) -> bool:
    return len(session.blocks) == 1 and session.blocks[0].kind is BlockKind.MAIN


def what_counts(session: Session) -> tuple[tuple[str, str], ...]:
    """Each movement of the session once, with what counts as one of it."""
    written = dict.fromkeys(
        (line.movement, line.variant) for block in session.blocks if block.scored for line in block.every_line
    )
    return tuple((movement, standard_of(movement, variant)) for movement, variant in written)


def standard_of(movement_id: str, variant_id: str | None) -> str:
    movement = catalogue().movement(movement_id)
    named = next((one for one in movement.variants if one.id == variant_id), movement.variants[0])
    return named.cue.counts
