"""Invented athletes and sessions, said as a coach would say them."""

from decimal import Decimal
from itertools import takewhile

from core.athletes.values import Equipment, Evidence, Profile, Screening, Space
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.scaling.values import Version
from core.scaling.version import version_for


def session(text):
    read = read_session(text, catalogue())
    assert not read.not_understood, read.not_understood
    assert read.session is not None
    return read.session


def things(*names):
    """`table`, `dumbbell 12`, `2x dumbbell 10 15`, `backpack to 15`, `dumbbell 2.5 to 20 by 2.5`."""
    return tuple(thing(name) for name in names)


def thing(name):
    each = 1
    if name.startswith("2x "):
        each, name = 2, name.removeprefix("2x ")
    implement, words = _named(name.split())
    if "to" not in words:
        return Equipment(implement=implement, loads_kg=tuple(map(Decimal, words)), each=each)
    numbers = [Decimal(word) for word in words if word not in {"to", "by"}]
    if words[0] == "to":
        return Equipment(implement=implement, to_kg=numbers[0], each=each)
    start, end, step = numbers
    return Equipment(implement=implement, from_kg=start, to_kg=end, step_kg=step, each=each)


def _named(words):
    """`pull-up bar` and `kettlebell 16 24`: what it is called, and what is said of its load."""
    name = list(takewhile(lambda word: word != "to" and not word[0].isdigit(), words))
    return " ".join(name), words[len(name) :]


def did(movement, reps, load=None, variant=None):
    return Evidence(
        movement=movement, variant=variant, reps=reps, load_kg=None if load is None else Decimal(str(load))
    )


def athlete(name="Ilse", *, owns=(), tests=(), mass=65, sex="female", **known):
    known.setdefault("screening", Screening.CLEAR)
    known.setdefault("limits", ())
    return Profile(
        name=name,
        body_mass_kg=None if mass is None else Decimal(mass),
        sex=sex,
        equipment=things(*owns),
        evidence=tuple(tests),
        **known,
    )


def version(text, who, **orders):
    made = version_for(session(text), who, catalogue(), **orders)
    assert isinstance(made, Version)
    return made


def lines(text, who, **orders):
    return [line for block in version(text, who, **orders).blocks for line in block.every_line]


def only_line(text, who, **orders):
    (line,) = lines(text, who, **orders)
    return line


NO_RUNNING = Space(running=False)
