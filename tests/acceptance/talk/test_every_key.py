"""Every key of every question works when it is tapped at once: none is dead on arrival."""

import asyncio
from contextlib import AsyncExitStack

import pytest

from bot.words.en.common import REFUSALS
from tests.acceptance.people import answers_what_is_asked, consents, start_link
from tests.acceptance.worlds import running, settings_for
from tests.rehearsal_fixtures import watched

FRIDAY = "Friday run day\n5 rounds for time\n400 m run\n10 push-ups"
SATURDAY = "Saturday\nAMRAP 12\n10 air squats\n200 m run"
TODAY = "Tuesday\nAMRAP 12\n10 push-ups\n12 goblet squats @ 16/12 kg\n200 m run"
TWO_PARTS = "Tuesday\n3 rounds for time\n10 push-ups\n\nFor time\n10 air squats\n200 m run"

# What is said, asked and tapped (`!`) until there are keys to tap, by what is asked then.
TALKS = {
    "which draft": ("Marit> " + FRIDAY, "Marit> " + SATURDAY, "Marit> make the run 300 m"),
    "which line": (
        "Marit> AMRAP 12\n10 push-ups\n200 m run\n10 air squats\n400 m run",
        "Marit> make the run 300 m",
    ),
    "a change or new": ("Marit> " + SATURDAY, "Marit> 5 burpees and 10 air squats for time"),
    "a draft": ("Bo joins", "Marit> " + SATURDAY),
    "withdrawing": ("Marit> " + TODAY, "Marit! Post now", "Marit> withdraw today's session"),
    "a class": ("Marit> class every Tuesday 19:00 for an hour",),
    "announcing": ("Bo joins", "Marit> announce: bring water"),
    "a note": ("Bo joins", "Marit> Bo: deadlifts at most 30 kg, his back rounds"),
    "an order": ("Bo joins", "Marit> " + TODAY, "Marit! Post now", "Marit> no push-ups for Bo"),
    "scores of several": (
        "Bo joins",
        "Ilse joins",
        "Marit> " + TODAY,
        "Marit! Post now",
        "Marit> Bo 3+2, Ilse 4+1",
    ),
    "whose score": ("Marit> " + TODAY, "Marit! Post now", "Marit> 5+3"),
    "consent": ("Bo comes",),
    "age": ("Bo comes", "Bo consents"),
    "things": ("Bo joins", "Marit> " + TODAY, "Marit! Post now", "Bo! My version"),
    "how heavy": ("Bo joins", "Marit> " + TODAY, "Marit! Post now", "Bo! My version", "Bo> a kettlebell"),
    "a version": ("Bo asks_for_a_version",),
    "which line of mine": ("Bo asks_for_a_version", "Bo! Change a line"),
    "how hard": ("Bo asks_for_a_version", "Bo> 5+3"),
    "what hurt": ("Bo asks_for_a_version", "Bo> 5+3", "Bo> 8"),
    "which part": ("Bo asks_for_a_version of two parts", "Bo> 5:20"),
    "sick": ("Bo asks_for_a_version", "Bo> I have a cold"),
    "sore": ("Bo asks_for_a_version", "Bo> my knee hurts"),
    "a sign": ("Bo asks_for_a_version", "Bo> I have chest pain"),
    "a break": ("Bo asks_for_a_version", "Bo> back after a month off"),
    "reminders": ("Bo joins", "Bo> reminders"),
    "forget me": ("Bo joins", "Bo> /forget"),
}


class Talk:
    def __init__(self, crew):
        self.crew, self.people, self.last = crew, {"Marit": crew.coach}, crew.coach

    async def goes_on(self, step):
        for mark in (">", "!"):
            name, found, words = step.partition(mark)
            if found and name in self.people:
                self.last = self.people[name]
                does = self.last.says if mark == ">" else self.last.presses
                await self.answered(does(words.strip()))
                return
        name, _, what = step.partition(" ")
        await getattr(self, what.split()[0])(name, what)
        await self.calms_down()

    async def joins(self, name, _):
        self.people[name] = await self.crew.has(name)

    async def comes(self, name, _):
        self.last = self.people[name] = await self.crew.room.person(name)
        await self.last.joins(self.crew.group)
        await self.last.opens(await start_link(self.crew.group))

    async def consents(self, name, _):
        await consents(self.people[name])

    async def asks_for_a_version(self, name, what):
        await self.joins(name, what)
        session = TWO_PARTS if what.endswith("parts") else TODAY
        await self.crew.gets(session)
        self.last = self.people[name]
        await answers_what_is_asked(self.last)

    async def answered(self, done):
        """Until something has come of it, and nothing more comes to anybody."""
        stood = await self.heard()
        await done
        while stood == await self.heard():  # noqa: ASYNC110 - the stand-in tells nobody
            await asyncio.sleep(0.05)
        await self.calms_down()

    async def calms_down(self):
        before = None
        while before != (before := await self.heard()):  # noqa: ASYNC110 - the same
            await asyncio.sleep(0.2)

    async def heard(self):
        """How much each was told, with what was shown for a moment."""
        return [
            (
                sum(told.from_bot for told in await one.messages),
                len(await one._do("toasts", place=0, within=0.0)),
            )
            for one in self.people.values()
        ]

    async def keys(self):
        """Under the newest message that has any, with that message."""
        shown = [one for one in await self.last.messages if one.all_buttons][-1]
        return shown, [one.label for one in shown.all_buttons if not one.url]


def after(kind):
    async def past(crew):
        talk = Talk(crew)
        for step in TALKS[kind]:
            await talk.goes_on(step)
        return talk

    return past


@pytest.fixture
def tried(worlds, tmp_path, outgoing):
    """What comes of `act(talk)` in a copy of the world in which that was said."""

    def in_a_copy(kind, act, number):
        began = worlds.after(PASTS[kind])
        world = began.again(tmp_path / f"{number}.db")

        async def lives():
            async with AsyncExitStack() as leave:
                leave.enter_context(watched(world.platform, outgoing))
                await running(world.platform, settings_for(world.database), leave)
                return await act(world.told[PASTS[kind]])

        return asyncio.run(lives())

    return in_a_copy


PASTS = {kind: after(kind) for kind in TALKS}


@pytest.mark.parametrize("kind", TALKS)
def test_every_key_works_when_it_is_tapped_at_once(tried, kind):
    async def taps(talk, at):
        shown, labels = await talk.keys()
        await talk.answered(talk.last.presses(labels[at], on=shown))
        toast = await talk.last.last_toast
        return toast.text if toast else ""

    async def labels(talk):
        return (await talk.keys())[1]

    found = tried(kind, labels, "labels")
    told = {label: tried(kind, lambda talk, at=at: taps(talk, at), at) for at, label in enumerate(found)}
    assert found
    assert {label: toast for label, toast in told.items() if toast in REFUSALS.values()} == {}
