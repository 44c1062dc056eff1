"""`bellwether movements [NAME]`: the catalogue, for reading and for other programs."""

from collections.abc import Iterator
from itertools import groupby
from typing import Annotated, Any

import typer

from bot.commands.console import AsJson, print_json, print_text
from core.desk.reference import UnknownName, catalogue, find_movement
from core.errors import InputError
from core.measures import AmountUnit
from core.movements.values import Movement, Share, Variant

UNITS = {
    AmountUnit.REPS: "repetition",
    AmountUnit.SECONDS: "second",
    AmountUnit.METRES: "metre",
    AmountUnit.KCAL: "kcal",
}


def movements(
    name: Annotated[str | None, typer.Argument(help="A movement or variant, in any spelling.")] = None,
    as_json: AsJson = False,
) -> None:
    """Show the catalogue, or one movement of it with all its variants."""
    if name is None:
        show_all(as_json=as_json)
        return
    try:
        movement, variant = find_movement(name)
    except UnknownName as unknown:
        if unknown.near:
            raise
        raise InputError(name, "no movement is called so; `bellwether movements` lists them.") from unknown
    variant = variant or movement.variants[0]
    if as_json:
        print_json(movement_document(movement, variant))
    else:
        print_text("\n".join(card_lines(movement, variant)))


def show_all(*, as_json: bool) -> None:
    if as_json:
        print_json({"movements": [movement_document(one, one.variants[0]) for one in catalogue().movements]})
    else:
        print_text("\n".join(list_lines()))


def movement_document(movement: Movement, variant: Variant) -> dict[str, Any]:
    """A movement with the facts of one variant (the written one unless another was named), and all variants.

    Ids are those of a version's lines: `push-up`, `hands-on-chair`; neighbours are `push-up/hands-on-chair`.
    """
    return {
        "id": movement.id,
        "names": movement.names,
        "pattern": movement.pattern,
        "k": movement.k,
        "variant": variant.id,
        **facts_of(movement, variant),
        "variants": [
            {"id": one.id, "names": one.names, **facts_of(movement, one)} for one in movement.variants
        ],
    }


def facts_of(movement: Movement, variant: Variant) -> dict[str, Any]:
    """One variant's facts, its numbers with their sources. `implements`: what it is held or done with."""
    return {
        **variant.model_dump(exclude={"id", "names", "cue"}),
        "unit": movement.unit_of(variant),
        "sides": movement.sides_of(variant),
        "trains": movement.trains_of(variant),
        "instead": movement.instead_of(variant),
        "implements": implements_of(variant),
        "cues": variant.cue.model_dump(exclude={"caution"}),
        "cautions": cautions_of(variant),
    }


def implements_of(variant: Variant) -> list[str]:
    """What it is held with or done on, each once."""
    return list(dict.fromkeys([*(hold.implement for hold in variant.holds), *variant.things]))


def cautions_of(variant: Variant) -> list[str]:
    """The usual caution, then that of each implement."""
    book = catalogue()
    return [variant.cue.caution, *(book.implement(one).caution for one in implements_of(variant))]


def list_lines() -> Iterator[str]:
    """The catalogue by patterns, a movement to a line with how many ways there are to do it."""
    for pattern, movements_of_it in groupby(catalogue().movements, key=lambda one: one.pattern):
        yield pattern.replace("-", " ").capitalize()
        for one in movements_of_it:
            ways = "1 way" if len(one.variants) == 1 else f"{len(one.variants)} ways"
            yield f"  {one.id} ({ways})"


def card_lines(movement: Movement, variant: Variant) -> Iterator[str]:
    """One movement as people read it: the cue card of a variant, its numbers, then the other ways."""
    cue, unit = variant.cue, UNITS[movement.unit_of(variant)]
    yield f"{movement.id}: {variant.label} ({movement.pattern.replace('-', ' ')})"
    yield f"  Start: {cue.start}"
    yield f"  One counts: {cue.counts}"
    yield f"  Think of: {' '.join(cue.cues)}"
    yield f"  Usual fault: {cue.fault}"
    yield f"  Take care: {cue.caution}"
    yield from (
        f"  Take care with a {one}: {catalogue().implement(one).caution}" for one in implements_of(variant)
    )
    yield f"  With: {', '.join(implements_of(variant)) or 'nothing'}"
    yield f"  Trains: {trains_words(movement, variant)}"
    yield f"  Moves {share_words(variant.body_share)}"
    yield f"  Takes {variant.seconds.value:g} s a {unit}: {variant.seconds.source}"
    yield f"  Asks for: {', '.join(variant.demands) or 'nothing special'}"
    yield f"  Easier: {', '.join(variant.easier) or 'none'}"
    yield f"  Harder: {', '.join(variant.harder) or 'none'}"
    yield f"  Instead: {', '.join(movement.instead_of(variant)) or 'none'}"
    yield from (f"  Also: {one.id}, {one.label}" for one in movement.variants if one is not variant)


def trains_words(movement: Movement, variant: Variant) -> str:
    """`squat 1, press 0.8`, the main part first."""
    parts = sorted(movement.trains_of(variant).items(), key=lambda row: -row[1])
    return ", ".join(f"{part} {share:g}" for part, share in parts)


def share_words(share: Share) -> str:
    """`64 % of body mass: source`, with the measured heights where there are some."""
    heights = ", ".join(f"{100 * row.value:.0f} % at {row.height_cm:g} cm" for row in share.by_height)
    return f"{100 * share.value:.0f} % of body mass{f' ({heights})' if heights else ''}: {share.source}"
