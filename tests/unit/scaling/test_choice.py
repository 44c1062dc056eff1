from itertools import product
from random import Random

from core.scaling.choice import Candidate, Section, choose
from tests.support.choices import MEETING, REST, some_sections, value_of

INSTANCES = 1_000


def brute_force(sections):
    """Every way of picking one candidate a line; a shared thing has one setting wherever it is used."""
    lines = [line for section in sections for line in section.lines]
    everything = product(*(range(len(line)) for line in lines))
    allowed = (chosen for chosen in everything if agrees([lines[n][pick] for n, pick in enumerate(chosen)]))
    return min(allowed, key=lambda chosen: value_of(sections, chosen, MEETING))


def agrees(picks):
    settings: dict[int, float] = {}
    return all(
        pick.thing is None or settings.setdefault(pick.thing, pick.load) == pick.load for pick in picks
    )


def chosen(*lines, ring=True):
    return choose([Section(lines, ring=ring)], MEETING)[1]


def test_the_choice_equals_brute_force_on_random_instances():
    random = Random(64)
    for _ in range(INSTANCES):
        sections = some_sections(random)
        assert choose(sections, MEETING) == value_of(sections, brute_force(sections), MEETING)


def line(*candidates):
    return [*candidates, REST]


def test_whatever_is_left_costs_less_than_a_rest():
    assert chosen(line(Candidate(399))) == (0,)


def test_one_adjustable_has_one_setting_for_the_whole_block():
    def at(load, cost):
        return Candidate(cost, thing=0, load=load)

    assert chosen(line(at(6, 1), at(8, 0))) == (1,)
    assert chosen(line(at(6, 1), at(8, 0)), line(at(6, 0), at(8, 3))) == (0, 0)


def test_implement_changes_are_counted_round_the_ring():
    dumbbell, kettlebell = (Candidate(0, held=(thing, 1, 16.0)) for thing in ("d", "k"))
    either = line(dumbbell, kettlebell)
    assert chosen(line(kettlebell), either, line(kettlebell)) == (0, 1, 0)


def test_a_line_that_is_last_and_not_followed_by_the_first_changes_for_free():
    dumbbell, kettlebell = (Candidate(0, held=(thing, 1, 16.0)) for thing in ("d", "k"))
    assert chosen(line(kettlebell), line(dumbbell), line(dumbbell, kettlebell), ring=False) == (0, 0, 0)


def test_a_tie_goes_to_the_first_in_the_order_of_the_options():
    assert chosen(line(Candidate(3), Candidate(3))) == (0,)


def test_a_stand_in_does_not_repeat_the_line_beside_it():
    swings, again, bridges = Candidate(0, "swing"), Candidate(1, "swing"), Candidate(9, "bridge")
    assert chosen(line(swings), line(again, bridges)) == (0, 1)


def test_a_movement_that_two_lines_ask_for_is_done_as_one():
    def of(kind, cost):
        return Candidate(cost, kind, asked="row")

    assert chosen(line(of("ride", 0), of("stairs", 2)), line(of("stairs", 0), of("ride", 3))) == (1, 0)
    assert chosen(line(of("ride", 0)), line(of("stairs", 0), of("ride", 40))) == (0, 0)


def test_a_stand_in_does_not_train_what_another_line_does_however_far_apart_they_are():
    pushes, steps = Candidate(0, "push-up", part="push"), Candidate(0, "step", part="squat")
    more, pulls = (
        Candidate(0, "chest press", part="push", adds=True),
        Candidate(4, "pull", part="pull", adds=True),
    )
    assert chosen(line(pushes), line(steps), line(more, pulls), ring=False) == (0, 0, 1)


def test_what_the_coach_wrote_for_the_same_part_on_two_lines_stays():
    pushes, dips = Candidate(0, "push-up", part="push"), Candidate(0, "dip", part="push")
    assert chosen(line(pushes), line(dips, Candidate(1, "pull", part="pull"))) == (0, 0)


def test_two_lines_are_not_both_done_on_the_joint_that_they_are_changed_for():
    fists, wall = Candidate(0, joint="wrist"), Candidate(4)
    assert chosen(line(fists), line(fists, wall)) == (0, 1)
