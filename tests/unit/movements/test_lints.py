import pytest

from core.movements.catalogue import catalogue
from core.movements.lints import LINTS, Severity, lint
from core.movements.values import HeightShare, Part

BOOK = catalogue()


def changed(variant_id, **fields):
    """The catalogue's movements with one variant changed."""
    home, _, way_id = variant_id.partition("/")
    return tuple(
        one
        if one.id != home
        else one.model_copy(
            update={
                "variants": tuple(
                    way.model_copy(update=fields) if way.id == way_id else way for way in one.variants
                )
            }
        )
        for one in BOOK.movements
    )


def moved(movement_id, **fields):
    """The catalogue's movements with one movement changed."""
    return tuple(one.model_copy(update=fields) if one.id == movement_id else one for one in BOOK.movements)


def way(variant_id):
    return BOOK.variant(variant_id)[1]


FLOOR = way("air squat/floor")
BROKEN = {
    "unique-ids": (*BOOK.movements, BOOK.movements[0]),
    "unique-spellings": moved("sit-up", names=("Push Ups",)),
    "known-ways": changed("sit-up/floor", instead=("somersault/double",)),
    "own-pattern": changed("sit-up/floor", instead=("sit-up/curl-up",)),
    "same-main-part": changed("sit-up/curl-up", easier=("dead bug/heel-taps",)),
    "one-step": changed("sit-up/floor", easier=(*way("sit-up/floor").easier, "sit-up/curl-up")),
    "symmetric": changed("air squat/half", harder=()),
    "no-circle": changed("air squat/half", easier=("air squat/floor",)),
    "no-dead-end": changed("seated lean/back", needs=(("chair",),), instead=("sit-up/weight",)),
    "connected": changed("push-up/paused", easier=(), harder=()),
    "known-things": changed("air squat/to-chair", needs=(("trampoline",),)),
    "known-reserves": changed("air squat/floor", reserves={"courage": 1.0}),
    "heights": changed(
        "push-up/hands-on-chair",
        body_share=way("push-up/hands-on-chair").body_share.model_copy(update={"value": 0.6}),
    ),
    "one-reference": changed("air squat/floor", ratio=FLOOR.ratio.model_copy(update={"source": "estimate"})),
    "counted": moved("sit-up", k=None),
    "sourced": changed(
        "air squat/floor", seconds=FLOOR.seconds.model_copy(update={"source": "somebody said"})
    ),
    "on-the-feet": changed("air squat/floor", demands=()),
    "one-main-part": changed("air squat/floor", trains={Part.SQUAT: 1.0, Part.BREATH: 1.0}),
    "cue-card": changed("air squat/floor", cue=FLOOR.cue.model_copy(update={"caution": "tbd"})),
    "easier-is-lighter": changed("air squat/half", ratio=FLOOR.ratio.model_copy(update={"value": 0.5})),
}


def test_the_catalogue_that_comes_along_has_no_findings():
    assert lint(BOOK.movements, BOOK.implements) == ()


def test_every_lint_is_tried_on_something_broken():
    assert BROKEN.keys() == LINTS.keys()


@pytest.mark.parametrize("name", LINTS)
def test_a_broken_catalogue_fails_the_lint(name):
    found = [finding for finding in lint(BROKEN[name], BOOK.implements) if finding.lint == name]
    assert found
    assert {finding.severity for finding in found} == {LINTS[name][0]}


def test_only_what_a_writer_may_weigh_is_a_warning():
    assert [name for name, (severity, _) in LINTS.items() if severity is Severity.WARNING] == [
        "easier-is-lighter"
    ]


@pytest.mark.parametrize("needs", [(("box", "box"),), (("box",), ("bench", "box"))])
def test_one_thing_cant_be_needed_twice(needs):
    found = lint(changed("box jump/box", needs=needs), BOOK.implements)
    assert "needs the same thing twice" in {finding.problem for finding in found}


def test_every_thing_of_a_choice_must_be_known():
    found = lint(changed("box jump/box", needs=(("box", "trampoline"),)), BOOK.implements)
    assert [finding.lint for finding in found] == ["known-things"]


def test_heights_must_go_upwards():
    rows = (HeightShare(height_cm=60, value=0.4), HeightShare(height_cm=30, value=0.5))
    share = way("push-up/hands-on-table").body_share.model_copy(update={"by_height": rows})
    found = lint(changed("push-up/hands-on-table", body_share=share), BOOK.implements)
    assert "heights don't go upwards" in {finding.problem for finding in found}


def test_two_things_may_not_share_a_spelling():
    twin = BOOK.implements[0].model_copy(update={"id": "twin"})
    assert "unique-spellings" in {finding.lint for finding in lint(BOOK.movements, (*BOOK.implements, twin))}


def test_a_thing_without_a_whole_caution_is_found():
    bare = BOOK.implements[0].model_copy(update={"caution": "heavy"})
    found = [
        finding
        for finding in lint(BOOK.movements, (bare, *BOOK.implements[1:]))
        if finding.lint == "cue-card"
    ]
    assert [finding.file for finding in found] == ["implements.toml"]
