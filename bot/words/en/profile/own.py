"""Words for what is stored of somebody: taking it along, forgetting it, and messages changed afterwards."""

from functools import partial

from bot.files.sheets import as_csv, as_json
from bot.words.en.moments import city
from bot.words.en.profile.about_me import sharing
from bot.words.text import bullets, escape, fill, listed
from bot.words.wording import Attachment, Button, Worded, wording
from core.desk.profile.commands import EraseMe, KeepMe
from core.desk.profile.says import (
    AskForget,
    ChangeNotTaken,
    ChangeTooLate,
    Forgotten,
    LimitsShared,
    Mine,
    NothingForgotten,
    Privacy,
    ScoreSheet,
    SheetRow,
)


@wording("en", ScoreSheet)
def score_sheet(said: ScoreSheet) -> Worded:
    head = ("name", "part", "score", "scaled", "time they had", "when")
    rows = [sheet_row(one) for one in said.rows]
    day = f"{said.day:%A, %-d %B}"
    title = f"{said.title}, {day}" if said.title else day
    file = Attachment(f"scores-{said.day:%Y-%m-%d}.csv", partial(as_csv, head, rows))
    text = fill(
        "The scores of {title}, for a spreadsheet. Times are {place} time.",
        title=title,
        place=city(said.zone),
    )
    return Worded(text + SHORTER * any(one.minutes is not None for one in said.rows), file=file)


SHORTER = " “time they had” is filled in where somebody's day was shorter."


def sheet_row(one: SheetRow) -> tuple[str, ...]:
    """As the scoreboard tells it: a score of less time than the others had must not look like one of all of it."""
    short = "" if one.minutes is None else f"{one.minutes:g} min"
    when = f"{one.at:%Y-%m-%d %H:%M}"
    return one.name, str(one.part), one.score, "yes" if one.scaled else "no", short, when


@wording("en", Mine)
def mine(said: Mine) -> Worded:
    file = Attachment(f"about-me-{said.on:%Y-%m-%d}.json", partial(as_json, said.stored))
    return Worded("Everything I've stored about you. Only you get this. /forget erases it.", file=file)


@wording("en", AskForget)
def ask_forget(said: AskForget) -> Worded:
    stays = (
        " What you posted to your groups as their coach stays with them, without your name."
        if said.coach
        else ""
    )
    text = (
        "Shall I erase everything I've stored about you? Your equipment, what you spare, your versions and your "
        f"scores go for good, and you leave the scoreboards.{stays} What stands in your chats is yours to delete.\n\n"
        "Send /export first if you want to keep a copy."
    )
    return Worded(text, ((Button("Yes, erase everything", EraseMe()), Button("No, keep it", KeepMe())),))


@wording("en", Forgotten)
def forgotten(_: Forgotten) -> Worded:
    return Worded(
        "Done. Everything about you is erased. If you ever come back, open the link in your group and we'll start afresh. "
        "Take care!"
    )


@wording("en", NothingForgotten)
def nothing_forgotten(_: NothingForgotten) -> Worded:
    return Worded("Good, everything stays as it is.")


@wording("en", ChangeNotTaken)
def change_not_taken(_: ChangeNotTaken) -> Worded:
    return Worded(
        "I saw that you changed a message. I've already gone by what it said before, so if something is different now, "
        "please send it to me as a new message."
    )


@wording("en", ChangeTooLate)
def change_too_late(said: ChangeTooLate) -> Worded:
    return Worded(
        fill(
            "That session stands in {group} already, and people have their versions of it, so I've left it as it was. "
            "Send me the new one and I'll read it back as another session.",
            group=said.group,
        )
    )


@wording("en", LimitsShared)
def limits_shared(said: LimitsShared) -> Worded:
    coach = fill("Your coach in {group}", group=said.group) if said.group else "Your coach"
    if said.yes:
        return Worded(f"{coach} sees from now on what you spare, beside your version. The group never does.")
    return Worded(f"{coach} doesn't see any more what you spare: they see your version, and no reasons.")


KEPT = (
    "I keep what you tell me, so that I can fit each session to you: equipment, ability, what you spare, your weight if "
    "you gave it, your scores and your messages."
)
WHERE = "It lies in the database of whoever runs me for your group, and I pass it on to nobody else."
TAKE_ALONG = "/me shows what I know, /export gives you all of it as a file, and /forget erases it."
YOUR_WEIGHT = "Only you see your weight. Your coach doesn't, nor does the group."
YOUR_SCORES = (
    "The group sees your name and your scores on the scoreboard. Your coach sees them too, in the words you told them with, "
    "and nothing else of what you wrote beside them. How hard it was for you stands on no scoreboard; your coach only hears "
    "where it was nearly all you had (9 or 10) in your first sessions, or twice in a row. You needn't tell me any score: "
    "without one you stand on no scoreboard."
)


@wording("en", Privacy)
def privacy(said: Privacy) -> Worded:
    texts = {
        "weight": YOUR_WEIGHT,
        "spared": what_you_spare(said),
        "scores": YOUR_SCORES,
        "all": f"{KEPT}\n\n{who_sees(said)}\n\n{WHERE}",
    }
    rows = sharing(said.shares) if said.topic in {"spared", "all"} else ()
    return Worded(f"{texts[said.topic]}\n\n{TAKE_ALONG}", rows)


def what_you_spare(said: Privacy) -> str:
    allowed = listed([escape(one.title) for one in said.shares if one.yes])
    now = "You haven't, so they see your version and no reasons."
    if allowed:
        now = f"You've allowed it in {allowed}." if len(said.shares) > 1 else "You've allowed it."
    return (
        f"What you spare and what hurts is never shown to the group. Your coach sees it only if you allow it. {now} "
        "They do see whose sessions wait, or need their OK."
    )


def who_sees(said: Privacy) -> str:
    return bullets([YOUR_WEIGHT, what_you_spare(said), YOUR_SCORES])
