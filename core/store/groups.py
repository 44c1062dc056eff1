"""Training groups and who belongs to them."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime

from sqlalchemy import ColumnElement, RowMapping, bindparam, select

from core.measures import MassUnit
from core.scores.values import EXACTLY, Tolerance
from core.store import tables
from core.store.people import person_of
from core.store.records import Group, GroupState, Membership, Role
from core.store.repository import Repository, rows_by

LEAD_MINUTES = 60


def _group_of(row: RowMapping) -> Group:
    told = dict(row)
    tolerance = Tolerance(
        lighter_percent=told.pop("lighter_percent"), other_implement=told.pop("other_implement")
    )
    return Group(
        **{**told, "units": MassUnit(row["units"]), "state": GroupState(row["state"])}, tolerance=tolerance
    )


def _membership_of(row: RowMapping) -> Membership:
    return Membership(
        id=row["id"],
        person=person_of(row, "person_"),
        own_name=row["person_name"],
        group_id=row["group_id"],
        role=Role(row["role"]),
        shares_limits=row["shares_limits"],
        held=row["held"],
        goes_heavier=row["goes_heavier"],
        volume_first=row["volume_first"],
        lead_minutes=row["lead_minutes"],
        joined_at=row["joined_at"],
        left_at=row["left_at"],
    )


# member.person_id and the label of person.id would share a name, so the former stays out.
_MEMBERS = (
    select(
        *(column for column in tables.membership.c if column.name != "person_id"),
        *(column.label(f"person_{column.name}") for column in tables.person.c),
    )
    .join(tables.person, tables.person.c.id == tables.membership.c.person_id)
    .order_by(tables.membership.c.id)
)

_LEFT = (
    select(tables.group.c.id)
    .where(tables.group.c.id == tables.membership.c.group_id, tables.group.c.state == GroupState.LEFT)
    .exists()
)
_PERSONS = _MEMBERS.where(tables.membership.c.person_id == bindparam("person"), ~_LEFT)
_GROUPS_OF = _PERSONS.where(tables.membership.c.left_at.is_(None))
_GROUPS_LEFT = _PERSONS.where(tables.membership.c.left_at.is_not(None))


def told_apart(members: Sequence[Membership]) -> list[Membership]:
    """The same, each called as nobody before them is."""
    seen: Counter[str] = Counter()
    told = []
    for one in members:
        name = one.person.name
        seen[name.casefold()] += 1
        number = seen[name.casefold()]
        called = name if number == 1 else f"{name} ({number})"
        told.append(replace(one, person=replace(one.person, name=called), own_name=name))
    return told


class Groups(Repository):
    async def open(self, chat_id: int, title: str, now: datetime) -> Group:
        """Create the group of this chat, or open it again with its title refreshed."""
        known = await self.by_chat(chat_id)
        if known is None:
            row = await self._add(
                tables.group,
                chat_id=chat_id,
                title=title,
                units=MassUnit.KG,
                lighter_percent=EXACTLY.lighter_percent,
                other_implement=EXACTLY.other_implement,
                state=GroupState.NEW,
                created_at=now,
            )
            return _group_of(row)
        state = GroupState.READY if known.zone else GroupState.NEW
        return _group_of(await self._change_one(tables.group, known.id, title=title, state=state))

    async def get(self, group_id: int) -> Group | None:
        row = await self._by_id(tables.group, group_id)
        return _group_of(row) if row else None

    async def by_chat(self, chat_id: int) -> Group | None:
        row = await self._one(rows_by(tables.group, "chat_id"), {"it": chat_id})
        return _group_of(row) if row else None

    async def set_up(self, group_id: int, zone: str | None = None, units: MassUnit | None = None) -> Group:
        """Change what is given; the units are told last and make a group ready. Raises NotStoredError."""
        changes: dict[str, object] = {}
        if zone is not None:
            changes |= {"zone": zone}
        if units is not None:
            changes |= {"units": units, "state": GroupState.READY}
        return _group_of(await self._change_one(tables.group, group_id, **changes))

    async def tolerate(self, group_id: int, tolerance: Tolerance) -> Group:
        """What counts as written from now on. Raises NotStoredError."""
        return _group_of(await self._change_one(tables.group, group_id, **dict(tolerance)))

    async def mark_left(self, group_id: int) -> None:
        await self._change_one(tables.group, group_id, state=GroupState.LEFT)

    async def join(self, person_id: int, group_id: int, role: Role, now: datetime) -> Membership:
        """Let a person belong to a group; joining twice changes nothing.

        An athlete who joins as coach is raised, a coach is never lowered. Who left comes back in this role.
        """
        known = await self.membership(person_id, group_id, even_left=True)
        if known is None:
            await self._add(
                tables.membership,
                person_id=person_id,
                group_id=group_id,
                role=role,
                shares_limits=False,
                held=False,
                goes_heavier=False,
                volume_first=False,
                lead_minutes=LEAD_MINUTES,
                joined_at=now,
            )
        elif known.left_at is not None:
            await self._change_one(tables.membership, known.id, role=role, left_at=None, joined_at=now)
        elif role is Role.COACH:
            await self._change_one(tables.membership, known.id, role=role)
        return await self._member(person_id, group_id)

    async def membership(
        self, person_id: int, group_id: int, *, even_left: bool = False
    ) -> Membership | None:
        member = tables.membership
        found = await self._members(
            *(() if even_left else (member.c.left_at.is_(None),)),
            member.c.person_id == person_id,
            member.c.group_id == group_id,
        )
        return found[0] if found else None

    async def groups_of(self, person_id: int) -> list[Membership]:
        """List where the person belongs, in groups the bot is still in, oldest first."""
        return [_membership_of(row) for row in await self._all(_GROUPS_OF, {"person": person_id})]

    async def groups_left(self, person_id: int) -> list[Membership]:
        """List where they belonged once, in groups the bot is still in."""
        return [_membership_of(row) for row in await self._all(_GROUPS_LEFT, {"person": person_id})]

    async def members(self, group_id: int, role: Role | None = None) -> list[Membership]:
        """Who belongs to the group now, first come first; whoever shares a name is told apart: `Bo`, `Bo (2)`."""
        member = tables.membership
        found = told_apart(await self._members(member.c.left_at.is_(None), member.c.group_id == group_id))
        return [one for one in found if role is None or one.role is role]

    async def set_lead(self, person_id: int, group_id: int, minutes: int) -> None:
        """How long before a class to remind."""
        await self._change_member(person_id, group_id, lead_minutes=minutes)

    async def follow(self, person_id: int, group_id: int, role: Role | None, now: datetime) -> None:
        """What the platform says of somebody who belonged here once: their role now, or (None) that they are gone."""
        known = await self.membership(person_id, group_id, even_left=True)
        if known is None or (known.left_at is not None and role is None):
            return
        if role is None:
            await self._change_one(tables.membership, known.id, left_at=now)
        elif known.left_at is not None:
            await self._change_one(tables.membership, known.id, role=role, left_at=None, joined_at=now)
        elif known.role is not role:
            await self._change_one(tables.membership, known.id, role=role)

    async def share_limits(self, person_id: int, group_id: int, yes: bool) -> None:
        """Whether this group's coach may see the person's limits."""
        await self._change_member(person_id, group_id, shares_limits=yes)

    async def hold(self, person_id: int, group_id: int, yes: bool) -> None:
        """Whether every version of this athlete waits for a coach's OK."""
        await self._change_member(person_id, group_id, held=yes)

    async def give_leeway(
        self,
        person_id: int,
        group_id: int,
        *,
        goes_heavier: bool | None = None,
        volume_first: bool | None = None,
    ) -> None:
        """What the coach lets this athlete do; what is None stays as it was."""
        told = {"goes_heavier": goes_heavier, "volume_first": volume_first}
        given = {name: yes for name, yes in told.items() if yes is not None}
        await self._change_member(person_id, group_id, **given)

    async def _change_member(self, person_id: int, group_id: int, **values: object) -> None:
        member = tables.membership
        await self._change(
            member,
            member.c.person_id == person_id,
            member.c.group_id == group_id,
            member.c.left_at.is_(None),
            **values,
        )

    async def _member(self, person_id: int, group_id: int) -> Membership:
        member = tables.membership
        found = await self._members(member.c.person_id == person_id, member.c.group_id == group_id)
        return found[0]

    async def _members(self, *where: ColumnElement[bool]) -> list[Membership]:
        return [_membership_of(row) for row in await self._all(_MEMBERS.where(*where))]
