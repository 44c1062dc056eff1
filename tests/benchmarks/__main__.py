"""Prints the speed table: `python -m tests.benchmarks [updates]`."""

import asyncio
import sys

from tests.benchmarks import updates, versions

_UPDATES = 3000


def main() -> None:
    number = int(sys.argv[1]) if len(sys.argv) > 1 else _UPDATES
    rows = versions.table() + asyncio.run(updates.table(number))
    width = max(len(what) for what, _ in rows)
    for what, value in rows:
        sys.stdout.write(f"{what:<{width}}  {value:>8}\n")


if __name__ == "__main__":
    main()
