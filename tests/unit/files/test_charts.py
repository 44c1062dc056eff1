"""The picture of how somebody is getting on: readable on a telephone, in a dark chat as in a light one."""

from datetime import date, timedelta
from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.files.charts import BAND, FAINT, GROUND, INK, LINE, WIDE, Panel, Point, as_picture, drawn
from bot.rehearsal.looking import picture_size

MONDAY = date(2026, 9, 7)
# WCAG 2.2, 1.4.3 and 1.4.11: how much text, and what has to be seen, must differ from its ground.
TEXT, THING = 4.5, 3.0
# Smaller is hard to read on a telephone (common practice, no source).
LEAST = 12


def points(*values, days=9, label="{:g} rounds"):
    return tuple(
        Point(MONDAY + timedelta(days=days * number), value, label.format(value))
        for number, value in enumerate(values)
    )


BESIDE = Panel(
    "Beside what I expected",
    points(-0.8, 0.1, -0.3, 0.6, 0.9, 1.5, label=""),
    (-1.28, 1.28),
    ("better", "less; most days land in the band"),
)
AGAIN = Panel("10 push-ups, 15 air squats", points(7.2, 7.9, 9.0))


def texts(figure):
    """Every word that is to be seen, with where it stands."""
    figure.draw_without_rendering()
    found = [one for one in figure.findobj(lambda one: hasattr(one, "get_text")) if one.get_text()]
    return [(one, one.get_window_extent()) for one in found if one.get_visible()]


def lightness(colour):
    """WCAG 2.2, relative luminance."""
    parts = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    red, green, blue = (one / 12.92 if one <= 0.04045 else ((one + 0.055) / 1.055) ** 2.4 for one in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one, other):
    darker, lighter = sorted((lightness(one), lightness(other)))
    return (lighter + 0.05) / (darker + 0.05)


def line_of(axes):
    return next(line for line in axes.lines if len(line.get_xdata()))


def test_it_is_a_picture_that_a_telephone_shows_whole():
    width, height = picture_size(as_picture([BESIDE, AGAIN])) or (0, 0)
    assert width == round(WIDE * 2.5)
    assert height < 2 * width


def test_every_score_is_a_point_at_its_own_height_more_is_higher():
    upper, lower = drawn([BESIDE, AGAIN]).axes
    assert list(line_of(upper).get_ydata()) == [point.value for point in BESIDE.points]
    assert list(line_of(lower).get_ydata()) == [7.2, 7.9, 9.0]
    at = [lower.transData.transform((0, value))[1] for value in (7.2, 9.0)]
    assert at[0] < at[1]


def test_where_less_is_better_less_is_higher():
    (axes,) = drawn([Panel("2 km row", points(480, 465, 450), upside_down=True)]).axes
    at = [axes.transData.transform((0, value))[1] for value in (480, 450)]
    assert at[0] < at[1]


def test_no_word_is_too_small_and_none_is_cut_off():
    figure = drawn([BESIDE, AGAIN])
    found = texts(figure)
    assert {one.get_text() for one, _ in found} >= {"better", "7.2 rounds", "9 rounds", "7 Sep", AGAIN.title}
    width, height = figure.bbox.size
    for one, where in found:
        assert one.get_fontsize() >= LEAST
        assert min(where.x0, where.y0, width - where.x1, height - where.y1) >= 0, one.get_text()


@settings(max_examples=8, deadline=None)
@given(
    st.lists(st.integers(0, 200), min_size=1, max_size=12),
    st.floats(0.5, 50),
    st.booleans(),
)
def test_no_word_stands_on_another_whenever_the_scores_were(days, step, turned):
    known = [
        Point(MONDAY + timedelta(days=day), step * (number % 5), f"{number} rounds + 12")
        for number, day in enumerate(sorted(days))
    ]
    figure = drawn(
        [Panel("12 push-ups, 15 goblet squats, 200 m run, 20 sit-ups", tuple(known), upside_down=turned)]
    )
    for (one, here), (other, there) in combinations(texts(figure), 2):
        assert not here.overlaps(there), (one.get_text(), other.get_text())


@pytest.mark.parametrize(
    ("one", "other", "least"),
    [
        (INK, GROUND, TEXT),
        (FAINT, GROUND, TEXT),
        (LINE, GROUND, THING),
        (LINE, BAND, THING),
        (INK, BAND, TEXT),
    ],
)
def test_what_is_to_be_seen_stands_out_from_its_ground(one, other, least):
    assert contrast(one, other) >= least


def test_a_sign_of_money_or_of_mathematics_is_only_a_sign():
    figure = drawn([Panel("$10 + x^2_3$", points(1, 2, label="a_b^c$ {}$"))])
    assert "$10 + x^2_3$" in {one.get_text() for one, _ in texts(figure)}
    as_picture([Panel("$10 + x^2_3$", points(1, 2, label="$\\frac{{{}$"))])
