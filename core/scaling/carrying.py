"""How much of one movement a coach means who puts it in another's place without a number."""

from decimal import Decimal

from core.ability.meant import meant_variant
from core.movements.lookup import Catalogue
from core.scaling.amounts import Done, amount_of, asked_of
from core.sessions.values import Block, Format, Line


def carried_over(old: Line, new: Line, movements: Catalogue) -> Line:
    """`new` with what stands for the amounts of `old`, by the rule for stand-ins in a version.

    However much it is: how much is a usual set is the coach's to say here.
    """
    asked = asked_of(Block(format=Format.QUALITY, lines=(old,)), old)
    written, to = _done(old, movements), _done(new, movements)

    def stands_for(amount: float | None) -> float | None:
        if amount is None:
            return None
        one = amount_of(asked._replace(amount=amount), written, to)
        return None if one.shown is None else round(one.shown / one.less)

    first = amount_of(asked, written, to)
    return new.model_copy(
        update={
            "amount": stands_for(old.amount),
            "amount_to": stands_for(old.amount_to),
            "second_amount": stands_for(old.second_amount),
            "unit": first.unit,
            "per_side": first.per_side,
        }
    )


def _done(line: Line, movements: Catalogue) -> Done:
    movement = movements.movement(line.movement)
    load: Decimal | None = line.loads_kg[0] if line.loads_kg else None
    return movement, meant_variant(movement, line.variant, load, line.implement, line.count)
