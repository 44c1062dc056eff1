"""What a session comes to for a group, and what a change would do."""

from bot.words.forecasts import forecast_words, middle_words
from bot.words.text import bullets, fill, listed
from bot.words.wording import Worded, wording
from core.desk.sessions.says import ExpectedOfGroup, WhatItWouldDo
from core.forecast.values import Forecast, GroupOutlook

# Longer than a class of an hour (estimate).
LONG_S = 75 * 60
NOTHING = "I can't tell what it comes to: nothing in it is scored, or I know too little of your people yet."


@wording("en", ExpectedOfGroup)
def expected_of_group(said: ExpectedOfGroup) -> Worded:
    if said.expected is None:
        return Worded(NOTHING)
    rows = [
        fill("{name}: {what}", name=one.name, what=forecast_words(one.forecast)) for one in said.expected.rows
    ]
    parts = [f"<b>What I'd expect</b>\n{bullets(rows)}", *aim_words(said.expected), *_unknown(said.expected)]
    return Worded("\n".join(parts))


@wording("en", WhatItWouldDo)
def what_it_would_do(said: WhatItWouldDo) -> Worded:
    if said.after is None:
        return Worded(NOTHING)
    now = {one.name: one.forecast for one in said.before.rows} if said.before else {}
    rows = []
    for one in said.after.rows:
        then, before = middle_words(one.forecast), now.get(one.name)
        same = before is not None and middle_words(before) == then
        was = "as now" if same else f"now {middle_words(before)}" if before else "not known now"
        rows.append(fill("{name}: {then} ({was})", name=one.name, then=then, was=was))
    head = "\n".join(["<b>What that would do</b>", *(line_words(*one) for one in said.lines)])
    parts = [f"{head}\n{bullets(rows)}", *aim_words(said.after)]
    return Worded("\n".join([*parts, "Nothing is changed yet: write the change itself, and I'll make it."]))


def line_words(was: str, now: str) -> str:
    if not was:
        return fill("“{now}” comes in:", now=now)
    return fill("“{was}” goes:", was=was) if not now else fill("“{was}” becomes “{now}”:", was=was, now=now)


def group_words(expected: GroupOutlook | None) -> list[str]:
    """One line for the read-back of a draft."""
    if expected is None or not expected.rows:
        return []
    low, high = (middle_words(one) for one in _edges(expected))
    across = low if low == high else f"{low} to {high}"
    return [" ".join([_across(expected, across), *aim_words(expected), *_doubt(expected)])]


def _doubt(expected: GroupOutlook) -> list[str]:
    """What takes longer than any class is likely misread: how often, or how far."""
    long = expected.unit == "s" and _edges(expected)[1].expected > LONG_S
    return ["That's long for one part: please check how often and how far."] if long else []


def _across(expected: GroupOutlook, across: str) -> str:
    """Of what has a cap, how many will be through; what the others come to, or what these take."""
    if expected.through is None:
        return fill("I'd expect {across} across your people.", across=across)
    through, count = expected.through
    who = "nobody" if not through else "everybody" if through == count else f"{through} of {count}"
    rest = (
        "in {across}"
        if expected.unit == "s"
        else "with some {across} for the rest"
        if through
        else "but some {across}"
    )
    return fill("I'd expect {who} to finish inside the cap, " + rest + ".", who=who, across=across)


def aim_words(expected: GroupOutlook) -> list[str]:
    if expected.aim is None:
        return []
    return [fill("{inside} of {count} inside your aim.", inside=expected.inside, count=len(expected.rows))]


def _edges(expected: GroupOutlook) -> tuple[Forecast, Forecast]:
    ordered = sorted((one.forecast for one in expected.rows), key=lambda one: one.expected)
    return ordered[0], ordered[-1]


def _unknown(expected: GroupOutlook) -> list[str]:
    if not expected.unknown:
        return []
    return [fill("I can't tell for {names}.", names=listed(expected.unknown))]
