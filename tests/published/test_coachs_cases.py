"""Cases of an experienced coach on the catalogue as it is (common practice, no source; invented people)."""

from decimal import Decimal

from bot.words.versions import caution_words
from core.scaling.values import Because, Change
from tests.unit.scaling.people import athlete, did, lines, only_line, version


def test_mirela_raises_her_hands_to_a_table_and_keeps_all_eight():
    tests = [did("push-up", 0, variant="floor"), did("push-up", 4, variant="knees")]
    line = only_line("6 rounds for time\n8 push-ups", athlete("Mirela", mass=78, owns=["table"], tests=tests))
    assert (line.variant, line.amount, line.reason.because) == ("hands-on-table", 8, Because.TOO_HEAVY)


def test_rolf_does_five_fives_at_his_seven_repetition_load():
    rolf = athlete("Rolf", sex="male", mass=80, owns=["barbell 60 70 80"], tests=[did("back squat", 7, 80)])
    line = only_line("5 x 5 back squats @ 80 kg, rest 3 min", rolf)
    assert (line.load_kg, line.amount, line.change) == (Decimal(80), 5, Change.NONE)


def test_piet_two_days_after_a_fever_gets_ten_easy_minutes_and_no_rank():
    tests = [did("push-up", 30), did("goblet squat", 30, 16)]
    piet = athlete(
        "Piet", sex="male", mass=80, limits=("after-illness",), owns=["kettlebell 16"], tests=tests
    )
    made = version("20 min amrap\n10 push-ups\n12 goblet squats @ 16 kg", piet)
    assert (made.blocks[0].minutes, made.effort_at_most, made.scored) == (10, 4, False)
    assert all(line.set_cost <= 0.5 for line in made.blocks[0].lines)
    assert not made.as_written


def test_lene_is_spared_all_that_pregnancy_should_be():
    lene = athlete(
        "Lene",
        mass=68,
        limits=("pregnancy",),
        owns=["kettlebell 16", "table"],
        tests=[did("push-up", 20), did("swing", 30, 16)],
    )
    text = "5 rounds for time\n200 m run\n10 burpees\n15 sit-ups\n12 swings @ 16 kg"
    run, burpees, sit_ups, swings = lines(text, lene)
    assert run.variant == "brisk-walk"
    assert (burpees.movement, burpees.variant) == ("burpee", "hands-on-table")
    assert sit_ups.movement == "bird dog"
    assert (swings.movement, swings.load_kg) == ("deadlift", 16)
    made = version(text, lene)
    assert not made.scored
    assert made.needs_coach[0].because is Because.LIMIT
    assert "Breathe out on the effort" in cautions(made)


def cautions(made):
    return " ".join(caution_words(one) for one in made.cautions)
