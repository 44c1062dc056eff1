"""Prints the speed table: `python -m tests.benchmarks`. Compare only figures of one run."""

import asyncio
import sys

from tests.benchmarks import choices, forecasts, long_texts, messages, priors, updates, versions
from tests.coach import judge

_PEOPLE = 1000
_UPDATES = 2000
_CHOICES = 300
_FORECASTS = 100
_FORESEEN = 60
_LEARNED_OF = 300


def main() -> None:
    show(versions.table(_PEOPLE))
    show(forecasts.table(_FORECASTS))
    show(forecasts.foresight(_FORESEEN))
    show(forecasts.learning(_LEARNED_OF))
    show(choices.table(_CHOICES))
    show(priors.table())
    show(judge.table())
    show(long_texts.table())
    show(asyncio.run(updates.table(_UPDATES)))
    sys.stdout.write(messages.table() + "\n")


def show(rows: list[tuple[str, str]]) -> None:
    for what, value in rows:
        sys.stdout.write(f"{what:<48}{value:>8}\n")
    sys.stdout.flush()


if __name__ == "__main__":
    main()
