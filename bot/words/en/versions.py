"""Words for the personal version."""

from bot.words.en.questions import understood
from bot.words.text import bullets, escape, fill
from bot.words.versions import block_heading, caution_words, line_words, need_words, withheld_words
from bot.words.wording import Button, Worded, wording
from core.desk.commands import ShowHow
from core.desk.reference import catalogue
from core.desk.says.versions import CoachNeeded, HowTo, NothingPosted, NoVersion, ShowVersion
from core.measures import MassUnit
from core.scaling.values import Version, VersionBlock

HEADS = {True: "Your version: as written", False: "Your version"}


@wording("en", ShowVersion)
def show_version(said: ShowVersion) -> Worded:
    version = said.version
    parts = [understood(said.understood)] if said.understood else []
    title = said.session.title
    parts.append(f"<b>{HEADS[version.as_written]}</b>" + (fill(" · {title}", title=title) if title else ""))
    parts += [block(one, said.units) for one in version.blocks]
    parts += [bullets([escape(note) for note in said.notes])] if said.notes else []
    parts += cautions(version)
    parts.append(ending(version))
    return Worded("\n\n".join(part for part in parts if part), ((how(said.version_id),),))


def block(one: VersionBlock, units: MassUnit) -> str:
    lines = [escape(words) for line in one.every_line for words in [line_words(line, units)]]
    return f"{escape(block_heading(one))}\n{bullets(lines)}"


def cautions(version: Version) -> list[str]:
    lines = [escape(caution_words(one)) for one in version.cautions]
    return ["Take care:\n" + bullets(lines)] if lines else []


def ending(version: Version) -> str:
    stop = "Stop if something hurts or feels wrong."
    if not any(one.scored for one in version.blocks):
        return f"Keep it easy today: no score, no rank, rest whenever you like. {stop}"
    return f"{stop} Done? Write me your score, like {example(version)}."


def example(version: Version) -> str:
    scored = next(one for one in version.blocks if one.scored)
    return "<code>7+12</code>" if scored.minutes else "<code>8:43</code>"


def how(version_id: int) -> Button:
    return Button("Show me how", ShowHow(version=version_id))


@wording("en", NoVersion)
def no_version(said: NoVersion) -> Worded:
    return Worded(escape(withheld_words(said.withheld)))


@wording("en", CoachNeeded)
def coach_needed(said: CoachNeeded) -> Worded:
    lines = [escape(need_words(need, said.units)) for need in said.needs]
    return Worded(fill("<b>{name}</b> may need you today:\n", name=said.athlete) + bullets(lines))


@wording("en", NothingPosted)
def nothing_posted(_: NothingPosted) -> Worded:
    return Worded("Nothing is posted yet. As soon as your coach posts a session, tap “My version” under it.")


@wording("en", HowTo)
def how_to(said: HowTo) -> Worded:
    return Worded("\n\n".join(card(f"{movement}/{variant}") for movement, variant in said.variants))


def card(variant_id: str) -> str:
    movement, variant = catalogue().variant(variant_id)
    cue = variant.cue
    return "\n".join(
        [
            fill("<b>{movement}: {variant}</b>", movement=movement.id.capitalize(), variant=variant.label),
            fill("Start: {start}", start=cue.start),
            fill("It counts when: {counts}", counts=cue.counts),
            *[fill("• {cue}", cue=one) for one in cue.cues],
            fill("Common slip: {fault}", fault=cue.fault),
            fill("Careful: {caution}", caution=cue.caution),
        ]
    )
