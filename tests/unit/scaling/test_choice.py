from itertools import product
from random import Random

from core.scaling.choice import choose, value_of
from core.scaling.ring import Candidate, Section
from tests.support.choices import REST, some_sections

INSTANCES = 2_000


def brute_force(sections):
    """Every way of picking one candidate a line; a shared thing has one setting wherever it is used."""
    lines = [line for section in sections for line in section.lines]
    everything = product(*(range(len(line)) for line in lines))
    allowed = (chosen for chosen in everything if agrees([lines[n][pick] for n, pick in enumerate(chosen)]))
    return min(allowed, key=lambda chosen: value_of(sections, chosen))


def agrees(picks):
    settings: dict[int, float] = {}
    return all(
        pick.thing is None or settings.setdefault(pick.thing, pick.load) == pick.load for pick in picks
    )


def test_the_choice_equals_brute_force_on_random_instances():
    random = Random(64)
    for _ in range(INSTANCES):
        sections = some_sections(random)
        assert choose(sections) == brute_force(sections)


def line(*candidates):
    return [*candidates, REST]


def test_a_line_without_a_safe_option_outweighs_everything_else():
    poor = Candidate((0, 40, 5, 1), 5)
    unsafe = Candidate((1, 0, 0, 0))
    assert choose([Section([line(unsafe, poor)])]) == (1,)


def test_the_worst_line_counts_before_the_sum():
    # One adjustable serves both lines: 6 kg misses one line by 8 steps, 8 kg misses both by 5.
    first = line(
        Candidate((0, 0, 1, 0), thing=0, load=6),
        Candidate((0, 5, 1, 0), thing=0, load=8),
    )
    second = line(
        Candidate((0, 8, 1, 0), thing=0, load=6),
        Candidate((0, 5, 1, 0), thing=0, load=8),
    )
    assert choose([Section([first, second])]) == (1, 1)


def test_one_adjustable_has_one_setting_for_the_whole_block():
    def at(load, distance):
        return Candidate((0, 0, distance, 0), thing=0, load=load)

    alone = [Section([line(at(6, 1), at(8, 0))])]
    shared = [Section([line(at(6, 1), at(8, 0)), line(at(6, 0), at(8, 3))])]
    assert choose(alone) == (1,)
    assert choose(shared) == (0, 0)


def test_implement_changes_are_counted_round_the_ring():
    dumbbell, kettlebell = (Candidate((0, 0, 0, 0), held=(thing, 1, 16.0)) for thing in ("d", "k"))
    either = line(dumbbell, kettlebell)
    lines = [line(kettlebell), either, line(kettlebell)]
    assert choose([Section(lines)]) == (0, 1, 0)


def test_a_tie_goes_to_last_times_choice_then_to_the_order_of_options():
    new, old = Candidate((0, 0, 0, 0), fresh=1), Candidate((0, 0, 0, 0), fresh=0)
    assert choose([Section([line(new, old)])]) == (1,)
    assert choose([Section([line(old, old)])]) == (0,)


def test_a_stand_in_does_not_repeat_the_line_beside_it():
    swings = Candidate((0, 0, 0, 0), kind="swing")
    again, bridges = Candidate((0, 0, 4, 0), 1, kind="swing"), Candidate((0, 0, 4, 0), 3, kind="bridge")
    assert choose([Section([line(swings), line(again, bridges)])]) == (0, 1)
