"""What a session comes to for a group: of its main part, for each by name, and how many are inside the coach's aim."""

from collections import Counter
from collections.abc import Mapping, Sequence

from core.forecast.values import GroupOutlook, OfOne, Outlook
from core.sessions.values import BlockKind, Format, Session

Outlooks = Sequence[Outlook | None]


def group_outlook(session: Session, outlooks: Mapping[str, Outlooks]) -> GroupOutlook | None:
    """`outlooks`: by name, for each block. None where nothing is expected of anybody."""
    counts = Counter(
        (block.kind is BlockKind.MAIN, number, one.forecast.unit)
        for number, block in enumerate(session.blocks)
        for one in (found[number] for found in outlooks.values() if found)
        if one is not None
    )
    if not counts:
        return None
    (_, number, unit), _ = max(counts.items(), key=lambda item: (item[0][0], item[1], item[0][1]))
    rows = tuple(
        OfOne(name=name, forecast=one.forecast)
        for name, found in outlooks.items()
        if found and (one := found[number]) is not None and one.forecast.unit == unit
    )
    units = [one.forecast.unit for found in outlooks.values() if found and (one := found[number])]
    is_capped = session.blocks[number].format is Format.FOR_TIME and session.blocks[number].cap_s is not None
    named = {row.name for row in rows}
    aim = session.blocks[number].aim
    return GroupOutlook(
        block=number + 1,
        unit=unit,
        rows=rows,
        aim=aim if aim and aim.of == "score" else None,
        unknown=tuple(name for name in outlooks if name not in named),
        through=(units.count("s"), len(units)) if is_capped else None,
    )
