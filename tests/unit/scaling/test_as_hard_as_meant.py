"""How much of what: a heavy day with light things, one hand for two, and less for whoever is new."""

from decimal import Decimal

from bot.words.headings import block_heading
from bot.words.reasons import reason_words
from core.athletes.circumstances import in_circumstances
from core.athletes.values import Screening, Today
from core.movements.lookup import catalogue
from core.scaling.amounts import amount_of, asked_of
from core.scaling.orders import Orders
from core.scaling.version import version_for
from core.sessions.values import Effort, Format
from tests.unit.scaling.people import athlete, did, lines, only_line, session

STRONG = [did("push-up", 40), did("overhead press", 1, 60)]
HEAVY_SQUATS = "5 x 5 back squat @ 80/55 kg\nrest 2 min"


def test_of_two_ways_of_a_heavy_day_the_heavier_is_done():
    who = athlete(sex="male", mass=82, experience="trained", owns=["2x dumbbell 10 20", "kettlebell 24"])
    line = only_line(HEAVY_SQUATS, who)
    assert (line.movement, line.count, line.load_kg) == ("front squat", 2, Decimal(20))


def test_what_is_nearly_as_heavy_and_easy_for_them_is_done_more_often():
    who = athlete(sex="male", mass=92, experience="trained", owns=["2x dumbbell 15"], tests=STRONG)
    line = only_line("4 x 6 strict press @ 40/25 kg\nrest 90 s", who)
    assert line.load_kg == Decimal(15)
    assert 8 <= (line.amount or 0) <= 12


def test_whoever_is_new_does_no_handful_of_what_is_light():
    who = athlete(mass=62, birth_year=1955, experience="some", owns=["2x dumbbell 2 4", "chair"])
    line = only_line(HEAVY_SQUATS, who)
    assert (line.amount or 0) >= 8


def test_a_press_stays_a_press_for_whoever_is_new_with_a_light_pair():
    who = athlete(sex="male", mass=96, birth_year=1959, experience="new", owns=["2x dumbbell 3 5", "chair"])
    assert only_line("4 x 6 strict press @ 40/25 kg\nrest 90 s", who).movement == "overhead press"


def test_a_band_is_not_pulled_by_whoever_has_a_weight():
    who = athlete(owns=["kettlebell 8 12", "band"], experience="some")
    line = only_line("AMRAP 15\n10 ring rows", who)
    assert (line.movement, line.implement) == ("single-arm row", "kettlebell")


def test_legs_do_no_more_for_it_that_one_hand_holds_the_weight():
    (block,) = session("5 rounds for time\n12 thrusters @ 40/25 kg").blocks
    both, one = (catalogue().variant(f"thruster/{way}") for way in ("barbell", "single-arm"))
    amount = amount_of(asked_of(block, block.lines[0]), both, one)
    assert (amount.per_side, amount.shown) == (True, 6)


def test_whoever_is_new_does_fewer_burpees_and_as_many_rows():
    who = athlete(mass=70, experience="new", owns=["dumbbell 8", "chair"])
    burpees, rows = lines("AMRAP 15\n10 burpees\n10 dumbbell rows @ 8", who)
    assert (burpees.amount or 0) < 10 <= (rows.amount or 0)


def test_a_light_weight_of_the_same_movement_is_lifted_more_often():
    who = athlete(
        sex="male", mass=84, experience="trained", owns=["dumbbell 12.5"], tests=[did("air squat", 80)]
    )
    line = only_line("4 x 8 goblet squats @ 32/24 kg\n2 min rest", who)
    assert (line.movement, line.load_kg) == ("goblet squat", Decimal("12.5"))
    assert (line.amount or 0) > 10


def test_a_load_that_is_looked_for_is_looked_for_on_a_bar():
    who = athlete(owns=["barbell 20 to 120 by 2.5"], tests=[did("deadlift", 3, 100)], experience="trained")
    assert only_line("work up to a heavy 3 deadlift", who).variant == "barbell"


def test_with_a_sore_elbow_weights_are_drawn_in_only_where_nothing_else_is_there():
    with_a_band = athlete(sex="male", mass=80, limits=("elbow",), owns=["dumbbell 10", "band"])
    without = athlete(sex="male", mass=80, limits=("elbow",), owns=["dumbbell 10"])
    assert "band" in (only_line("AMRAP 15\n8 pull-ups", with_a_band).implement or "")
    assert only_line("AMRAP 15\n8 ring rows", without).movement == "single-arm row"


def test_a_sore_elbow_takes_nothing_from_the_legs():
    who = athlete(sex="male", mass=80, limits=("elbow",), owns=["dumbbell 16"], experience="some")
    assert only_line("4 rounds for time\n12 goblet squats @ 24/16", who).amount == 12


def test_of_weights_that_cost_the_same_the_heaviest_is_taken():
    who = athlete(
        mass=68, limits=("knee",), owns=["2x dumbbell 4 8", "kettlebell 12", "chair"], experience="some"
    )
    assert only_line(HEAVY_SQUATS, who).load_kg == Decimal(12)


def test_half_of_a_heavy_set_is_no_set_of_five():
    who = athlete(sex="male", mass=79, owns=["kettlebell 16", "2x dumbbell 12"], experience="some")
    assert (only_line(HEAVY_SQUATS, who).amount or 0) >= 8


def test_a_sore_wrist_goes_down_on_its_fist():
    who = athlete(sex="male", mass=79, limits=("wrist",), experience="some")
    assert only_line("AMRAP 15\n10 burpees", who).variant == "fists"


def test_a_heavier_weight_squats_and_presses_for_a_ball_that_is_not_there():
    who = athlete(sex="male", mass=90, owns=["kettlebell 16"], experience="trained")
    line = only_line("5 rounds for time\n20 wall balls @ 9/6", who)
    assert (line.movement, line.load_kg) == ("thruster", Decimal(16))


def test_whoever_goes_easy_is_not_told_to_go_hard():
    hard = "5 rounds for time\n400 m run, hard but even"
    usual, gently = athlete(experience="trained"), athlete(experience="trained", screening=Screening.MODERATE)
    assert "hard" in (only_line(hard, usual).notes or "")
    assert "hard" not in (only_line(hard, gently).notes or "")


def easily(text, high, words=None):
    made = session(text)
    effort = Effort(low=None, high=high, words=words)
    return made.model_copy(
        update={"blocks": tuple(one.model_copy(update={"effort": effort}) for one in made.blocks)}
    )


def test_an_easy_part_is_no_chase_and_says_so_in_the_coach_s_words():
    who = athlete(sex="male", experience="trained", tests=[did("push-up", 40)])
    text = easily("AMRAP 40\n400 m run\n10 push-ups", 4, "easy, you can talk")
    (block,) = version_for(text, who, catalogue()).blocks
    assert not block.scored
    assert block_heading(block) == "40 minutes, round after round at an easy pace (easy, you can talk)"


def test_an_easy_set_costs_half_of_what_goes_at_most():
    who = athlete(sex="male", tests=[did("push-up", 15)])
    written = "AMRAP 20\n10 push-ups"
    (hard,), (easy,) = (
        version_for(one, who, catalogue()).blocks[0].lines for one in (session(written), easily(written, 4))
    )
    assert hard.variant == "floor"
    assert (easy.variant, easy.amount) != (hard.variant, hard.amount)


def test_hard_is_not_said_to_whoever_should_go_easy():
    who = in_circumstances(athlete(experience="trained", weeks_off=7))
    text = session("8 x 400 m run, rest 90 s")
    hard = text.model_copy(
        update={
            "blocks": (text.blocks[0].model_copy(update={"effort": Effort(low=7, high=9, words="hard")}),)
        }
    )
    (block,) = version_for(hard, who, catalogue()).blocks
    assert block.effort is None


def test_no_more_effort_is_named_than_all_of_the_work_is_meant_to_take():
    who = athlete(experience="new")
    made = version_for(easily("AMRAP 20\n10 squats", 4), who, catalogue())
    assert made.effort_at_most == 4


def test_a_comeback_is_not_made_harder():
    who = in_circumstances(athlete(sex="male", mass=88, experience="trained", weeks_off=7, owns=["bench"]))
    made = lines("AMRAP 15\n12 box jumps\n20 step-ups", who)
    assert all(one.movement != "squat jump" and "knee-drive" not in one.variant for one in made)


def test_what_stood_in_for_one_thing_does_not_stand_in_for_the_next():
    who = athlete(
        sex="male", experience="trained", limits=("seated",), owns=["2x dumbbell 2.5 to 20 by 2.5", "band"]
    )
    squats, deadlifts = lines("5 x 5 back squat @ 80\nrest 2 min\n\n5 x 5 front squat @ 60\nrest 2 min", who)
    assert squats.movement != deadlifts.movement


def test_the_unsteady_press_sitting():
    who = athlete(mass=55, birth_year=1948, limits=("unsteady",), owns=["2x dumbbell 2", "chair"])
    assert only_line("4 x 6 strict press @ 20\nrest 90 s", who).variant == "seated"


def test_who_is_let_go_heavier_does_and_nobody_else():
    who = athlete(
        sex="male",
        mass=82,
        experience="trained",
        owns=["2x dumbbell 5 to 30 by 2.5", "bench"],
        tests=[did("push-up", 35)],
    )
    text = "4 x 8 dumbbell bench press @ 2 x 20 kg\nrest 90 s"
    written, heavier = (only_line(text, who, orders=Orders(heavier=yes)) for yes in (False, True))
    assert written.load_kg == Decimal(20)
    assert (heavier.load_kg or 0) >= Decimal("22.5")
    assert "it's heavier" in reason_words(heavier, who.units)


def test_sore_legs_are_named_where_another_thing_is_the_reason():
    who = athlete(sex="male", mass=79, owns=["dumbbell 2.5 to 25 by 2.5"], today=Today(sore=("legs",)))
    line = only_line("5 x 5 back squat @ 80 kg\nrest 2 min", who)
    assert "for the sake of your sore legs" in reason_words(line, who.units)


def test_whoever_goes_easy_is_given_no_weight_that_is_nothing():
    who = athlete(
        sex="male",
        mass=104,
        birth_year=1976,
        experience="new",
        limits=("shoulder",),
        owns=["2x dumbbell 2.5 to 20 by 2.5", "bench"],
    )
    (_, press) = lines("4 sets, rest 2 min\n6 front squats @ 50 kg\n6 strict presses @ 35 kg", who)
    assert (press.load_kg or 0) * (press.count or 1) >= Decimal(10)


def test_minutes_of_what_is_not_scored_are_said():
    (block,) = version_for(
        easily("AMRAP 40\n400 m run", 4), athlete(experience="trained"), catalogue()
    ).blocks
    assert block_heading(block.model_copy(update={"format": Format.QUALITY})) == (
        "40 minutes at your own pace (effort 4 of 10 at most)"
    )


def test_a_long_set_in_one_go_is_light_enough_to_go_in_one():
    who = athlete(sex="male", mass=80, experience="some", owns=["dumbbell 5 10 15 20 25 30"], tests=STRONG)
    broken, whole = (only_line(f"For time\n40 goblet squats{said}", who) for said in ("", " unbroken"))
    assert whole.set_cost <= 0.9 < broken.set_cost
