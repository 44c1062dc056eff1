"""A coach's order for people who are named, or for the one who is looked at: `no burpees for Tove this week`."""

from collections.abc import Sequence

from core.understanding.acts import Order
from core.understanding.marks import mark
from core.understanding.slots.orders import order, says
from core.understanding.slots.stretch import Stretch
from core.understanding.values import Context


def orders_in(text: str, people: Sequence[str], looked_at: str | None = None) -> tuple[Order, ...]:
    """An order for each who is named, in words that say what shall become of which line; none where they don't.

    `looked_at`: who is meant by `her` and `them`.
    """
    marked = mark(text, tuple(people), names_small=True)
    stretch = Stretch(marked, 0, len(marked.words), Context(people=tuple(people)))
    named = stretch.values("person")
    if not named and looked_at and says(stretch, "them"):
        named = [looked_at]
    if not named or text.strip().endswith("?"):
        return ()
    fields = order(stretch)
    return tuple(Order(text=text.strip(), person=one, **fields) for one in named) if fields else ()
