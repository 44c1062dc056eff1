"""Words for a version that waits for the coach, to both sides."""

from bot.words.en.versions.version import under
from bot.words.headings import block_heading
from bot.words.text import bullets, escape, fill
from bot.words.versions import in_turn, line_words, need_words, what_words
from bot.words.wording import Button, Worded, wording
from core.desk.coaching.commands import AcceptVersion, LookAtAthlete, SeeSession
from core.desk.versions.says import CoachNeeded, HeldForCoach, LookAtVersion, VersionReleased
from core.measures import MassUnit
from core.scaling.values import Because, VersionBlock


@wording("en", HeldForCoach)
def held_for_coach(said: HeldForCoach) -> Worded:
    if said.why == "held":
        words = (
            "Your coach likes to look at your version before you get it. I've just shown it to them, and it comes "
            "here as soon as they say OK. Until then, this is what the whole group got:"
        )
        return Worded(words, ((Button("The session as posted", SeeSession(session=said.session_id)),),))
    return Worded(
        "With what you told me, your coach looks at your version first. I've sent it to them, without the reason; "
        "you'll get it here as soon as they say OK. Do tell them yourself what you want them to know."
    )


# Reasons that would tell a coach of somebody's health, or of what they only told me.
PRIVATE = {Because.LIMIT, Because.LIGHT_DUTY, Because.ASKED}


WAITS = {
    "told": (
        "<b>{name}</b> told me something and needs your OK before this session; talk with them if you can."
    ),
    "held": "<b>{name}</b> asks for their version, and you hold theirs for your OK.",
}
STILL_WAITS = "<b>{name}</b> is still waiting for your OK. I won't ask again."


def block_for_coach(one: VersionBlock, units: MassUnit) -> str:
    lines = [
        (what_words(line, units) if line.reason.because in PRIVATE else line_words(line, units))
        + under(line, units)
        for line in one.every_line
    ]
    return f"{escape(block_heading(one))}\n{bullets([escape(words) for words in in_turn(one, lines)])}"


@wording("en", LookAtVersion)
def look_at_version(said: LookAtVersion) -> Worded:
    blocks = [block_for_coach(one, said.units) for one in said.version.blocks]
    waits = STILL_WAITS if said.again else WAITS[said.why]
    text = fill(f"{waits} This is the version I'd give them:", name=said.version.athlete)
    needs = [escape(need_words(one, said.units)) for one in said.version.needs_coach if one.written]
    why = [f"Look twice at:\n{bullets(needs)}"] if needs else []
    ok = AcceptVersion(session=said.session_id, revision=said.revision, person=said.person)
    change = LookAtAthlete(session=said.session_id, person=said.person)
    row = (Button("OK, send it to them", ok), Button("Change it first", change))
    return Worded("\n\n".join([text, *blocks, *why]), (row,))


@wording("en", VersionReleased)
def version_released(said: VersionReleased) -> Worded:
    words = "Sent to {name}." if said.asked else "OK: {name} gets it as soon as they ask, without waiting."
    return Worded(fill(words, name=said.athlete))


@wording("en", CoachNeeded)
def coach_needed(said: CoachNeeded) -> Worded:
    lines = [escape(need_words(need, said.units)) for need in said.needs]
    look = Button("Look at their version", LookAtAthlete(session=said.session_id, person=said.person))
    text = fill("<b>{name}</b> may need you today:\n", name=said.athlete) + bullets(lines)
    return Worded(text, ((look,),))
