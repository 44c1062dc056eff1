"""What a coach lets one athlete do from now on: go heavier than written, or do fewer before it gets easier."""

from core.desk.access import admitted
from core.desk.coached import athlete_in, coached_athletes
from core.desk.coaching.commands import LetGoHeavier, PutVolumeFirst
from core.desk.coaching.says import LeewayGiven
from core.desk.outcome import Outcome
from core.desk.visit import Visit
from core.notation.coaching.leeway import read_leeway


async def as_leeway(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`let Ilse go heavier`, `volume first for Bo`; None where it is about none of the visitor's athletes."""
    athletes = await coached_athletes(visit)
    told = read_leeway(text, athletes) if athletes else None
    if told is None:
        return None
    member = athletes[told.name]
    if told.of == "heavier":
        return await let_go_heavier(
            visit, LetGoHeavier(group=member.group_id, person=member.person_id, yes=told.yes)
        )
    return await put_volume_first(
        visit, PutVolumeFirst(group=member.group_id, person=member.person_id, yes=told.yes)
    )


@admitted
async def let_go_heavier(visit: Visit, command: LetGoHeavier) -> Outcome:
    athlete = await athlete_in(visit.uow, command.group, command.person)
    await visit.uow.groups.give_leeway(command.person, command.group, goes_heavier=command.yes)
    given = LeewayGiven(**dict(command), athlete=athlete.person.name, of="heavier")
    return visit.told(given) + Outcome(settles=True)


@admitted
async def put_volume_first(visit: Visit, command: PutVolumeFirst) -> Outcome:
    athlete = await athlete_in(visit.uow, command.group, command.person)
    await visit.uow.groups.give_leeway(command.person, command.group, volume_first=command.yes)
    given = LeewayGiven(**dict(command), athlete=athlete.person.name, of="volume")
    return visit.told(given) + Outcome(settles=True)
