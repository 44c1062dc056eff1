"""A no to what was asked."""

from core.desk.access import admitted
from core.desk.commands import LeaveIt
from core.desk.outcome import Outcome
from core.desk.says import LeftAsItIs
from core.desk.visit import Visit


@admitted
async def leave_it(visit: Visit, _: LeaveIt) -> Outcome:
    return visit.told(LeftAsItIs()) + Outcome(settles=True)
