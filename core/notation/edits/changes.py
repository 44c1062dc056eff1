"""All that a message asks to be changed in a session: what of it was done, what wasn't, and what isn't clear."""

from typing import NamedTuple

from core.measures import MassUnit
from core.movements.lookup import Catalogue
from core.notation.boards.session import read_session
from core.notation.edits.becoming import Carry
from core.notation.edits.editing import checked, edited, fact_in, lines_meant, names_a_line
from core.notation.edits.renumbering import renumbered
from core.notation.edits.resting import read_rest, with_rest
from core.notation.edits.retelling import read_told, retold, tells_of_a_part
from core.notation.edits.scoped import in_its_place, scopes_of
from core.notation.edits.spots import piece_of
from core.notation.edits.wordings import Edit, Wish, for_all, read_edits, read_wishes, told_of_line
from core.notation.names.catalogued import lexicon


class Unclear(NamedTuple):
    """A wish that may mean several `lines`: which each is (`Edit.at`), and its words."""

    words: str
    lines: tuple[tuple[int, str], ...]


class Changed(NamedTuple):
    """The `text` after all that could be done; `left`: the words of what could not. `so_already`: nothing is to do."""

    text: str
    left: tuple[str, ...] = ()
    unclear: Unclear | None = None
    so_already: bool = False


class _On(NamedTuple):
    """Whose words the movements are, and what they count in."""

    movements: Catalogue
    unit: MassUnit
    carry: Carry | None

    def done(self, text: str, edits: tuple[Edit, ...]) -> str | None:
        """The text after the first reading of a wish that can be carried out, of the line that it must mean."""
        found = (edited(text, edit, *self) for edit in edits)
        done = next((words for words in found if words is not None), None)
        return done if done is not None else self.done_in_the_work(text, edits)

    def done_in_the_work(self, text: str, edits: tuple[Edit, ...]) -> str | None:
        meant = ((edit, lines_meant(text, edit, *self)) for edit in edits if edit.at is None)
        only = next(((edit, lines[0][0]) for edit, lines in meant if len(lines) == 1), None)
        return edited(text, only[0]._replace(at=only[1]), *self) if only else None

    def retold(self, text: str, message: str) -> Changed | None:
        """The text with what the message tells of a part."""
        told = retold(text, message, self.movements, self.unit)
        return None if told is None else Changed(told, so_already=told == text)

    def renumbered(self, text: str, message: str) -> Changed | None:
        """The text with a number for another, where it reads as another session then."""
        new = checked(text, renumbered(text, message, self.movements, self.unit), self.movements, self.unit)
        return None if new is None else Changed(new)

    def told_plainly(self, text: str, message: str) -> Changed | None:
        """The text with a rest, or what is told of a part by its name, for which nothing else can be meant."""
        if rested := self.rested(text, message):
            return rested
        rest = read_rest(message)
        if rest and rest.of and piece_of(rest.of, lexicon(self.movements), self.unit).meaning:
            return Changed(text, left=(message,))
        if not tells_of_a_part(text, message, self.movements, self.unit):
            return None
        return self.told_of_part(text, message) or Changed(text, left=(message,))

    def of_a_part(self, text: str, message: str) -> Changed | None:
        """The text with how a part is done, or with a number for another."""
        return self.rested(text, message) or self.retold(text, message) or self.renumbered(text, message)

    def rested(self, text: str, message: str) -> Changed | None:
        """The text with a rest of all, or of what is named."""
        done = with_rest(text, message, self.movements, self.unit)
        return None if done is None else Changed(done)

    def told_of_part(self, text: str, message: str) -> Changed | None:
        """The text with what is told of a part by its name: how it is done, or what is done in it."""
        told = self.retold(text, message) or self.renumbered(text, message)
        if told is not None:
            return told
        edits = (Edit("change", one.of, one.said, beside=one.before) for one in read_told(message) if one.of)
        done = self.done(text, tuple(edits))
        return None if done is None else Changed(done)

    def told_of_line(self, text: str, message: str) -> Changed | None:
        """The text with what is told of one line of it with no word for a change: `burpees down to 8`."""
        done = self.done(text, told_of_line(message))
        return None if done is None else Changed(done)

    def unclear(self, text: str, wish: Wish) -> Unclear | None:
        found = (lines_meant(text, edit, *self) for edit in wish.edits)
        return next((Unclear(wish.words, lines) for lines in found if len(lines) > 1), None)

    def lines(self, text: str) -> list[str]:
        """What each line of the text is called."""
        read = read_session(text, self.movements, self.unit).session
        return [line.movement for block in read.blocks for line in block.lines] if read else []

    def names_a_line(self, text: str, wishes: tuple[Wish, ...]) -> bool:
        return any(
            names_a_line(text, edit, self.movements, self.unit) for one in wishes for edit in one.edits
        )


def changed(
    text: str,
    message: str,
    movements: Catalogue,
    unit: MassUnit = MassUnit.KG,
    carry: Carry | None = None,
    at: int | None = None,
) -> Changed | None:
    """The coach's text after the changes that a message asks for; None where it asks for none of this text.

    `at`: the line that is meant. Nothing of the message is dropped without standing in `left` or `unclear`.
    """
    on = _On(movements, unit, carry)
    message = for_all(message)
    return (_in_scope(text, message, on) if at is None else None) or _in_all(text, message, on, at)


def _in_all(text: str, message: str, on: _On, at: int | None) -> Changed | None:
    """The same, where the whole text is meant."""
    movements, unit = on.movements, on.unit
    if at is None and (first := on.told_plainly(text, message)):
        return first
    whole = Wish(message, tuple(one._replace(at=at) for one in read_edits(message)))
    if not whole.edits and (fact := fact_in(message, movements, unit)):
        whole = Wish(message, (fact,))
    wishes = read_wishes(message)
    found = _one_by_one(text, wishes, on)
    if wishes and not (found.left or found.unclear):
        return found
    if done := on.done(text, whole.edits):
        return Changed(done)
    if unclear := on.unclear(text, whole):
        return Changed(text, unclear=unclear)
    told = on.retold(text, message) or on.renumbered(text, message) or on.told_of_line(text, message)
    if told is None and (found.text != text or found.unclear or on.names_a_line(text, (whole, *wishes))):
        return found if wishes else Changed(text, left=(message,))
    return told


def _in_scope(text: str, message: str, on: _On) -> Changed | None:
    """The text with a change of the stretch that a message names: a day, a turn, or a part."""
    for scope in scopes_of(text, message, on.movements, on.unit):
        found = changed(scope.text, scope.words, on.movements, on.unit, on.carry)
        if found and found.text != scope.text and not (found.left or found.unclear):
            return Changed(scope.put(found.text))
        new, lines = in_its_place(scope), on.lines(scope.text)
        only = (Edit("swap", lines[0], new), Edit("change", lines[0], new)) if new and len(lines) == 1 else ()
        if new and (done := on.done(scope.text, (*only, Edit("change", "", new)))):
            return Changed(scope.put(done))
    return None


def _one_by_one(text: str, wishes: tuple[Wish, ...], on: _On) -> Changed:
    left: list[Wish] = []
    beside = ""
    for wish in wishes:
        told = on.of_a_part(text, wish.words)
        done = on.done(text, tuple(one._replace(beside=beside) for one in wish.edits)) or (told and told.text)
        beside = (
            next((_changed_by(one) for one in wish.edits if one.verb != "add"), beside) if done else beside
        )
        text = done or text
        left += [] if done else [wish]
    unclear = next(filter(None, (on.unclear(text, wish) for wish in left)), None)
    words = tuple(wish.words for wish in left if unclear is None or wish.words != unclear.words)
    return Changed(text, words, unclear)


def _changed_by(edit: Edit) -> str:
    """The words for the line that an edit changed: `10 squats` where these came in its place."""
    return edit.new if edit.verb == "swap" else edit.target or edit.new
