"""Words for a change of a session that a coach asked for in words."""

from bot.words.text import fill
from bot.words.wording import Worded, wording
from core.desk.sessions.says import AmendedAfterPost, AmountCarried, NotAmended


@wording("en", AmendedAfterPost)
def amended_after_post(said: AmendedAfterPost) -> Worded:
    return Worded(
        fill(
            "The session in {group} stays as everybody saw it until you post this one: then the earlier post says "
            "that it was changed, and /today shows the new one.",
            group=said.group,
        )
    )


@wording("en", AmountCarried)
def amount_carried(said: AmountCarried) -> Worded:
    return Worded(
        fill(
            "You named no number, so “{was}” became <b>{now}</b>, which takes about as long. Rather another? "
            "Write it like <i>make the {name} 15</i>.",
            was=said.was,
            now=said.now,
            name=said.name,
        )
    )


@wording("en", NotAmended)
def not_amended(_: NotAmended) -> Worded:
    return Worded(
        "I see which line you mean, but not what it should become. Write it like <i>make the row 200 m</i>, "
        "<i>change 10 push-ups to 8</i> or <i>swap the run for 20 burpees</i>, or send the whole session again."
    )
