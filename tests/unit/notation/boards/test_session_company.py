"""What stands beside the work in a coach's text: talk, titles, partners, and names nobody knows."""

import pytest

from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_session
from core.notation.lines.reading import read_piece
from core.notation.names.catalogued import lexicon


def read(text):
    return read_session(text, catalogue())


def only_block(text):
    found = read(text)
    assert found.not_understood == ()
    assert found.session is not None
    (block,) = found.session.blocks
    return block


UNREAD = [
    ("Breathe, everybody!", ("Breathe, everybody!", 1, "note")),
    ("Focus on breathing", ("Focus on breathing", 1, "note")),
    ("  Keep your hips low, and smile", ("Keep your hips low, and smile", 3, "note")),
    ("bring a towel today", ("bring a towel today", 1, "note")),
    ("???", ("???", 1, "note")),
    ("10 Flying Saucers AND Blorps", ("Flying Saucers AND Blorps", 4, "movement")),
    ("- 12 Blorps @ 20 kg", ("Blorps", 6, "movement")),
    ("Blorps", ("Blorps", 1, "movement")),
    ("10 приседаний", ("приседаний", 4, "movement")),
    ("push-ups", ("push-ups", 1, "work")),
    ("0 push-ups", ("0 push-ups", 1, "work")),
    ("24/16/12", ("24/16/12", 1, "work")),
]


@pytest.mark.parametrize(("line", "wanted"), UNREAD, ids=[line for line, _ in UNREAD])
def test_an_unread_stretch_is_named_in_the_coachs_own_words_and_for_what_it_looks_like(line, wanted):
    (one,) = read(f"AMRAP 12\n5 sit-ups\n{line}").not_understood
    assert (one.text, one.column, one.looks_like) == wanted
    assert one.line == 3


def test_talk_takes_nothing_from_the_block_and_unknown_work_does():
    for line, partial in (("Breathe, everybody!", False), ("10 blorps", True)):
        session = read(f"AMRAP 12\n5 sit-ups\n{line}").session
        assert session is not None
        assert session.blocks[0].partial is partial


def test_talk_opens_no_block_and_closes_none():
    session = read("AMRAP 12\n5 sit-ups\nKeep moving, everyone\n10 push-ups").session
    assert session is not None
    assert [len(block.lines) for block in session.blocks] == [2]


def test_where_only_the_movements_are_unknown_it_says_which_they_are():
    found = read("21-15-9 for time\nBlorps 43/30 kg\nzorb ups\ncap 12 min")
    assert found.session is None
    assert found.format_known
    assert found.unknown_movements == ("Blorps", "zorb ups")
    assert not read("hello there").format_known


@pytest.mark.parametrize(
    "name", ["pul-up", "pull ups", "pullups", "chin-up", "single-leg deadlift", "step down"]
)
def test_no_guess_is_an_opposite(name):
    words = lexicon(catalogue())
    meaning, guess = words.near(name), words.guess(name)
    for said in (meaning.spelling if meaning else "", guess or ""):
        assert "push" not in said
        assert "double" not in said
        assert said != "step-up"


@pytest.mark.parametrize(
    ("typed", "movement"),
    [("pul-ups", "pull-up"), ("puhs-ups", "push-up"), ("gobelt squats", "goblet squat")],
)
def test_a_slip_is_read_as_what_it_is_nearest_to(typed, movement):
    meaning = lexicon(catalogue()).near(typed)
    assert meaning is not None
    assert meaning.movement == movement


@pytest.mark.parametrize("typed", ["12 10 push ups", "2.5 squats", "blorp press", "Slow Burner"])
def test_another_number_or_another_word_is_no_slip(typed):
    words = lexicon(catalogue())
    assert words.near(typed) is None


TITLES = [
    ('Title: "The Lighthouse" \N{FIRE}', "The Lighthouse"),
    ("Workout: The Lighthouse", "The Lighthouse"),
    ("Today's session - Long Way Home", "Long Way Home"),
    ("\N{LEFT DOUBLE QUOTATION MARK}Big Red\N{RIGHT DOUBLE QUOTATION MARK}", "Big Red"),
    ("** The Lighthouse **", "The Lighthouse"),
    ("\N{FIRE} The  Lighthouse \N{FIRE}", "The Lighthouse"),
]


@pytest.mark.parametrize(("typed", "title"), TITLES, ids=[title for _, title in TITLES])
def test_a_title_stands_without_what_announces_it(typed, title):
    session = read(f"{typed}\nAMRAP 12\n10 push-ups").session
    assert session is not None
    assert session.title == title


@pytest.mark.parametrize(
    "title", ["Thursday, slow and strong", "Slow and strong", "Easy does it", "Six lines", "Three friends"]
)
@pytest.mark.parametrize("then", ["\n", "\n\n"])
def test_a_title_that_sounds_like_a_way_of_doing_it_is_one_above_what_says_so_itself(title, then):
    session = read(f"{title}{then}AMRAP 12\n10 push-ups").session
    assert session is not None
    assert (session.title, session.blocks[0].format, session.blocks[0].minutes) == (title, "amrap", 12)


def test_a_title_in_quotes_may_stand_before_the_format():
    session = read('"Big Red" - 4 RFT\n10 push-ups').session
    assert session is not None
    assert (session.title, session.blocks[0].rounds) == ("Big Red", 4)


@pytest.mark.parametrize("typed", ['"AMRAP 12"', "Session: AMRAP 12", "Workout: AMRAP 12"])
def test_a_format_is_no_title(typed):
    session = read(f"{typed}\n10 push-ups").session
    assert session is not None
    assert (session.title, session.blocks[0].minutes) == (None, 12)


@pytest.mark.parametrize(
    ("typed", "note"),
    [
        ("AMRAP 20 w/ partner, share the work", "share the work"),
        ("AMRAP 20 with a partner. Split the reps as you like", "Split the reps as you like"),
        ("Partner workout: AMRAP 20", None),
        ("AMRAP 20, you go I go", None),
    ],
)
def test_who_trains_with_a_partner_is_a_team_of_two(typed, note):
    block = only_block(f"{typed}\n10 push-ups")
    assert (block.team, block.minutes, block.notes) == (2, 20, note)


@pytest.mark.parametrize("typed", ["rest as needed", "Rest between sets as needed", "rest when you need to"])
def test_rest_without_a_number_is_kept_as_a_note(typed):
    block = only_block(f"4 RFT\n10 push-ups\n{typed}")
    assert (block.rest_s, block.notes) == (None, typed)


STATIONS = [
    "EMOM 12\n1: 12 cal row\n2: 10 burpees\n3: 30 sec plank",
    "EMOM 12\n1. 12 cal row\n2. 10 burpees\n3. 30 sec plank",
    "EMOM 12\n1) 12 cal row\n2) 10 burpees\n3) 30 sec plank",
    "EMOM 12\n1 - 12 cal row\n2 - 10 burpees\n3 - 30 sec plank",
    "EMOM 12\nMin 1: 12 cal row\nMin 2: 10 burpees\nMin 3: 30 sec plank",
    "EMOM 12\n1st minute: 12 cal row\n2nd minute: 10 burpees\n3rd minute: 30 sec plank",
]


@pytest.mark.parametrize("text", STATIONS, ids=[text[8:16] for text in STATIONS])
def test_a_numbered_list_under_intervals_says_what_is_done_when(text):
    block = only_block(text)
    assert [(line.station, line.movement, line.amount) for line in block.lines] == [
        (1, "row", 12),
        (2, "burpee", 10),
        (3, "plank", 30),
    ]


def test_a_numbered_list_elsewhere_is_only_a_list():
    block = only_block("4 RFT\n1. 10 push-ups\n2. 10 burpees")
    assert [line.station for line in block.lines] == [None, None]


RESTS = [
    ("EMOM 9\nMin 1: 10 push-ups\nMin 2: 10 burpees\nMin 3: rest", (1, 2), (3,)),
    ("EMOM 9\nminute 1 - 10 push-ups\nminute 2 - rest\nminute 3 - 10 burpees", (1, 3), (2,)),
    ("EMOM 9\n1. 10 push-ups\n2. 10 burpees\n3. rest", (1, 2), (3,)),
    ("EMOM 9\n1. 10 push-ups\n2. rest\n3. 10 burpees", (1, 3), (2,)),
    ("EMOM 10\nodd: 10 push-ups\neven: rest", (1,), (2,)),
    ("EMOM 10\n1. 10 push-ups\n2. rest", (1,), (2,)),
]


@pytest.mark.parametrize(("text", "work", "rest"), RESTS)
def test_a_minute_of_rest_is_a_station_among_the_others(text, work, rest):
    block = only_block(text)
    assert (tuple(line.station for line in block.lines), block.rest_stations) == (work, rest)
    assert block.notes is None


def test_a_rest_where_nothing_goes_by_the_minute_is_kept_as_a_note():
    block = only_block("4 RFT\n1. 10 push-ups\n2. 10 burpees\n3. rest")
    assert (block.rest_stations, block.notes) == ((), "3. rest")


ONE_BY_ONE = [
    "2 min max push ups\nrest 2 min\n2 min max burpees",
    "2 min max push ups, rest 2 min, 2 min max burpees",
]


@pytest.mark.parametrize("text", ONE_BY_ONE)
def test_each_time_of_as_many_as_possible_is_a_block(text):
    session = read(text).session
    assert session is not None
    assert [
        (block.format, block.minutes, block.rest_s, block.lines[0].movement) for block in session.blocks
    ] == [("max_reps", 2, 120, "push-up"), ("max_reps", 2, None, "burpee")]


def test_minutes_of_most_in_rounds_are_intervals():
    block = only_block("3 rounds\n1 min max push ups\n1 min max sit ups\n1 min rest")
    assert (block.format, block.rounds, block.every_s, block.rest_s) == ("intervals", 3, 60, 60)


ONE_LINE = [
    ("30 min run easy", "quality", None, ["run"]),
    ("run 30 min", "quality", None, ["run"]),
    ("For time: 50-40-30-20-10 double unders and sit ups", "for_time", (50, 40, 30, 20, 10),
     ["double-under", "sit-up"]),
    ("10 to 1 burpees and goblet squats 16kg", "for_time", tuple(range(10, 0, -1)), ["burpee", "goblet squat"]),
    ("10-1 burpees and sit-ups", "for_time", tuple(range(10, 0, -1)), ["burpee", "sit-up"]),
    ("20 s on 10 s off eight rounds air squats", "intervals", (), ["air squat"]),
    ("20s on/10s off x 8: air squats", "intervals", (), ["air squat"]),
    ("8 x 20s on / 10s off air squats", "intervals", (), ["air squat"]),
    ("8 rounds of 20 seconds on, 10 seconds off: air squats", "intervals", (), ["air squat"]),
    ("AMRAP 12 10 push ups 10 sit ups", "amrap", (), ["push-up", "sit-up"]),
    ("5 RFT 400m run 15 push ups", "for_time", (), ["run", "push-up"]),
    ("AMRAP 10: 8 push press 2 x 10kg, 30s hollow hold, 20m farmers carry 2x24/16", "amrap", (),
     ["push press", "hollow hold", "farmer carry"]),
]  # fmt: skip


@pytest.mark.parametrize(
    ("text", "format_", "scheme", "movements"), ONE_LINE, ids=[row[0][:30] for row in ONE_LINE]
)
def test_a_session_in_one_line_is_read(text, format_, scheme, movements):
    block = only_block(text)
    assert block.format == format_
    assert block.scheme == (scheme or ())
    assert [line.movement for line in block.lines] == movements
    again = read(write_session(read(text).session))
    assert again.not_understood == ()


def test_work_and_rest_in_one_line_count_their_rounds():
    for text in ("20 s on 10 s off eight rounds air squats", "20s on/10s off x 8: air squats"):
        block = only_block(text)
        assert (block.work_s, block.rest_s, block.every_s, block.rounds) == (20, 10, 30, 8)


def test_every_name_of_the_catalogue_is_read_beside_an_amount_and_without():
    """`10 feet elevated push-ups` are no ten feet of something else."""
    words = lexicon(catalogue())
    for spelling, meant in catalogue().spellings():
        for text, amount in ((spelling, None), (f"10 {spelling}", 10), (f"{spelling} x 10", 10)):
            piece = read_piece(text, 0, words, MassUnit.KG)
            assert piece.meaning is not None, text
            assert (piece.meaning.movement, piece.meaning.near) == (meant.movement.id, False), text
            assert piece.meaning.variant == (meant.variant.id if meant.variant else None), text
            assert (piece.amount, piece.unread) == (amount, ""), text


@pytest.mark.parametrize(
    ("line", "movement", "amount", "unit"),
    [
        ("10 inchworms", "inchworm", 10, "reps"),
        ("10 feet elevated push-ups", "push-up", 10, "reps"),
        ("50 DUs", "double-under", 50, "reps"),
        ("30 feet bear crawl", "bear crawl", 9.144, "m"),
        ("30 ft bear crawl", "bear crawl", 9.144, "m"),
    ],
)
def test_a_unit_is_one_only_where_no_name_begins_with_it(line, movement, amount, unit):
    (read_line,) = only_block(f"AMRAP 12\n{line}").lines
    assert (read_line.movement, read_line.amount, read_line.unit) == (movement, amount, unit)


def test_fifteen_squats_are_fifteen():
    (line,) = only_block("AMRAP 12\n15 squats").lines
    assert (line.amount, line.variant) == (15, None)


def test_a_slip_in_a_format_leaves_everything_behind_it_at_its_place():
    found = read("AMRAPP 12: 10 Push-Ups, 10 gobelt squats")
    assert [(one.column, one.text, one.read_as) for one in found.corrected] == [
        (1, "AMRAPP", "amrap"),
        (25, "10 gobelt squats", "goblet squat"),
    ]
    assert found.session is not None
    assert found.session.blocks[0].lines[0].written == "10 Push-Ups"


def test_talk_right_under_a_block_belongs_to_it_and_talk_apart_to_all():
    first = "5 x 5 deadlifts @ 60 kg\nKeep your back flat, all of you"
    second = "AMRAP 12\n5 sit-ups\nBreathe, everybody!"
    text = f"{first}\n\n{second}\n\nSee you at the quay"
    assert [(one.text, one.block) for one in read(text).not_understood] == [
        ("Keep your back flat, all of you", 1),
        ("Breathe, everybody!", 2),
        ("See you at the quay", None),
    ]


def test_what_is_unread_says_how_many_lines_of_its_block_stand_before_it():
    text = "AMRAP 12\n4 blorps\n10 push-ups, 3 zorbs, 5 pull-ups\n7 blorps\n\nFor time\n30 burpees\n9 blorps"
    found = read_session(text, catalogue()).not_understood
    assert [(one.block, one.after) for one in found] == [(1, 0), (1, 1), (1, 2), (2, 1)]


def test_what_a_read_line_lacks_has_its_place_already():
    (open_end,) = read_session("3 rounds for time\nburpees", catalogue()).not_understood
    assert open_end.after is None
