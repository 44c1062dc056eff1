"""How well the priors of strength hold for twenty men whom they never saw."""

from tests.support.linnerud import CHINS, SIT_UPS, inside


def table() -> list[tuple[str, str]]:
    """Rows for the table: how many of twenty lie in the range that should hold eighteen."""
    rows = (("pull-up/strict", CHINS), ("chin-up/strict", CHINS), ("sit-up/floor", SIT_UPS))
    return [(f"of 20 men in nine-in-ten range, {way}", str(inside(way, counts))) for way, counts in rows]
