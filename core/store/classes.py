"""Classes with what was decided about single dates, who comes, and how people want to be reminded."""

from collections import defaultdict
from collections.abc import Collection, Iterable, Sequence
from datetime import datetime, time

from sqlalchemy import ColumnElement, RowMapping, select

from core.calendar.slots import local_of, slot_of
from core.calendar.values import Class, Quiet
from core.store import tables
from core.store.people import person_of
from core.store.records import ClassRecord, ClassState, OccurrenceState, Person, ReminderHabits, SignUp
from core.store.repository import Repository


def _local(text: str) -> datetime:
    return datetime.fromisoformat(text)


def _record_of(row: RowMapping, decided: Sequence[RowMapping]) -> ClassRecord:
    cancelled = [one["slot"] for one in decided if one["state"] == OccurrenceState.CANCELLED]
    moved = {one["slot"]: one["moved_to"] for one in decided if one["state"] == OccurrenceState.MOVED}
    of = Class(
        title=row["title"],
        zone=row["zone"],
        start=_local(row["start"]),
        rule=row["rule"],
        minutes=row["minutes"],
        link=row["link"],
        cancelled=frozenset(local_of(slot) for slot in cancelled),
        moved={local_of(slot): local_of(to) for slot, to in moved.items()},
    )
    return ClassRecord(
        id=row["id"],
        group_id=row["group_id"],
        author_id=row["author_id"],
        of=of,
        state=ClassState(row["state"]),
        replaces_id=row["replaces_id"],
        created_at=row["created_at"],
    )


class Classes(Repository):
    async def propose(
        self, *, group_id: int, author_id: int, of: Class, now: datetime, replaces_id: int | None = None
    ) -> ClassRecord:
        """Keep a class that waits for its coach's yes; `replaces_id`: the one that ends with it."""
        row = await self._add(
            tables.training_class,
            group_id=group_id,
            author_id=author_id,
            title=of.title,
            zone=of.zone,
            start=of.start.isoformat(timespec="minutes"),
            rule=of.rule,
            minutes=of.minutes,
            link=of.link,
            state=ClassState.PROPOSED,
            replaces_id=replaces_id,
            created_at=now,
        )
        return _record_of(row, ())

    async def get(self, class_id: int) -> ClassRecord | None:
        """By an id of our own. What comes from outside asks `find`."""
        found = await self._found(tables.training_class.c.id == class_id)
        return found[0] if found else None

    async def find(self, class_id: int, groups: Collection[int]) -> ClassRecord | None:
        """Through these groups: a class of another group is not found."""
        table = tables.training_class
        found = await self._found(table.c.id == class_id, table.c.group_id.in_(groups))
        return found[0] if found else None

    async def live(self, group_id: int) -> list[ClassRecord]:
        """List the group's classes that take place, oldest first."""
        table = tables.training_class
        return await self._found(table.c.group_id == group_id, table.c.state == ClassState.LIVE)

    async def proposed_by(self, author_id: int, since: datetime) -> ClassRecord | None:
        """The newest that waits for this coach's yes."""
        table = tables.training_class
        found = await self._found(
            table.c.author_id == author_id,
            table.c.state == ClassState.PROPOSED,
            table.c.created_at >= since,
        )
        return found[-1] if found else None

    async def set_state(self, class_id: int, state: ClassState) -> None:
        """Raise NotStoredError if there is none."""
        await self._change_one(tables.training_class, class_id, state=state)

    async def put_off(self, class_id: int, start: datetime, rule: str | None) -> None:
        """Give a proposed class another first start."""
        text = start.isoformat(timespec="minutes")
        await self._change_one(tables.training_class, class_id, start=text, rule=rule)

    async def cancel(self, class_id: int, original: datetime, now: datetime) -> None:
        """Call off one date."""
        await self._decide(class_id, original, OccurrenceState.CANCELLED, None, now)

    async def move(self, class_id: int, original: datetime, to: datetime, now: datetime) -> None:
        """Move one date to another local start. It keeps its key."""
        await self._decide(class_id, original, OccurrenceState.MOVED, slot_of(to), now)

    async def _decide(
        self,
        class_id: int,
        original: datetime,
        state: OccurrenceState,
        moved_to: int | None,
        now: datetime,
    ) -> None:
        table, slot = tables.occurrence, slot_of(original)
        values = {"state": state, "moved_to": moved_to, "changed_at": now}
        changed = await self._change(table, table.c.class_id == class_id, table.c.slot == slot, **values)
        if not changed:
            await self._add(table, class_id=class_id, slot=slot, **values)

    async def _found(self, *where: ColumnElement[bool]) -> list[ClassRecord]:
        table = tables.training_class
        rows = await self._all(select(table).where(*where).order_by(table.c.id))
        if not rows:
            return []
        decided = await self._decided([row["id"] for row in rows])
        return [_record_of(row, decided[row["id"]]) for row in rows]

    async def _decided(self, ids: Iterable[int]) -> dict[int, list[RowMapping]]:
        table = tables.occurrence
        found: dict[int, list[RowMapping]] = defaultdict(list)
        for row in await self._all(select(table).where(table.c.class_id.in_(list(ids)))):
            found[row["class_id"]].append(row)
        return found


def _sign_up_of(row: RowMapping) -> SignUp:
    return SignUp(
        person_id=row["person_id"],
        class_id=row["class_id"],
        slot=row["slot"],
        coming=row["coming"],
        attended=row["attended"],
    )


class SignUps(Repository):
    """Who comes to which date, by its original local start; and who was there."""

    async def put(self, person_id: int, class_id: int, slot: int, now: datetime, *, coming: bool) -> bool:
        """Whether that changed anything."""
        known = await self.get(person_id, class_id, slot)
        if known is None:
            if coming:
                await self._add(
                    tables.sign_up,
                    person_id=person_id,
                    class_id=class_id,
                    slot=slot,
                    coming=True,
                    changed_at=now,
                )
            return coming
        if known.coming is coming:
            return False
        await self._change(
            tables.sign_up, *self._one_of(person_id, class_id, slot), coming=coming, changed_at=now
        )
        return True

    async def get(self, person_id: int, class_id: int, slot: int) -> SignUp | None:
        row = await self._one(select(tables.sign_up).where(*self._one_of(person_id, class_id, slot)))
        return _sign_up_of(row) if row else None

    async def tell_attended(self, person_id: int, class_id: int, slot: int, *, yes: bool) -> None:
        await self._change(tables.sign_up, *self._one_of(person_id, class_id, slot), attended=yes)

    async def coming(self, class_id: int, slot: int) -> list[tuple[Person, SignUp]]:
        """List who comes on this date, first come first."""
        sign_up = tables.sign_up
        return await self._with_people(sign_up.c.class_id == class_id, sign_up.c.slot == slot)

    async def coming_from(self, class_id: int, slot: int) -> list[tuple[Person, SignUp]]:
        """List who comes on this date or a later one."""
        sign_up = tables.sign_up
        return await self._with_people(sign_up.c.class_id == class_id, sign_up.c.slot >= slot)

    async def of_person(self, person_id: int, slot: int) -> list[SignUp]:
        """List what this person comes to on this date or later."""
        sign_up = tables.sign_up
        rows = await self._all(
            select(sign_up)
            .where(sign_up.c.person_id == person_id, sign_up.c.slot >= slot, sign_up.c.coming.is_(True))
            .order_by(sign_up.c.slot, sign_up.c.id)
        )
        return [_sign_up_of(row) for row in rows]

    async def _with_people(self, *where: ColumnElement[bool]) -> list[tuple[Person, SignUp]]:
        sign_up, person = tables.sign_up, tables.person
        columns = [column.label(f"their_{column.name}") for column in person.c]
        rows = await self._all(
            select(*sign_up.c, *columns)
            .join(person, person.c.id == sign_up.c.person_id)
            .where(*where, sign_up.c.coming.is_(True))
            .order_by(sign_up.c.id)
        )
        return [(person_of(row, "their_"), _sign_up_of(row)) for row in rows]

    @staticmethod
    def _one_of(person_id: int, class_id: int, slot: int) -> tuple[ColumnElement[bool], ...]:
        sign_up = tables.sign_up
        return (sign_up.c.person_id == person_id, sign_up.c.class_id == class_id, sign_up.c.slot == slot)


def _time(text: str | None) -> time | None:
    return None if text is None else time.fromisoformat(text)


class HabitsOfPeople(Repository):
    """How people want to be reminded; their lead is their membership's."""

    async def get(self, person_id: int) -> ReminderHabits:
        """What was told; nothing of somebody who told nothing."""
        row = await self._one(select(tables.habits).where(tables.habits.c.person_id == person_id))
        if row is None:
            return ReminderHabits()
        start, end = _time(row["quiet_start"]), _time(row["quiet_end"])
        quiet = Quiet(start=start, end=end) if start is not None and end is not None else None
        return ReminderHabits(
            zone=row["zone"],
            quiet=quiet,
            digest_at=_time(row["digest_at"]),
            wants_digest=row["wants_digest"],
        )

    async def save(self, person_id: int, habits: ReminderHabits, now: datetime) -> None:
        quiet = habits.quiet
        await self._put(
            tables.habits,
            "person_id",
            person_id=person_id,
            zone=habits.zone,
            quiet_start=quiet and quiet.start.isoformat("minutes"),
            quiet_end=quiet and quiet.end.isoformat("minutes"),
            digest_at=habits.digest_at and habits.digest_at.isoformat("minutes"),
            wants_digest=habits.wants_digest,
            changed_at=now,
        )
