# SPDX-License-Identifier: LGPL-2.1-or-later
"""The proof of order on photographs: every fault named, clean bundles left alone, nothing claimed
that the figure does not show. How often: tests/bench/proof.py."""

from functools import cache

import numpy as np
import pytest
from scipy.ndimage import gaussian_filter

from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Bundle, Leaf, Side
from veneerwb.core.log.sawn import Disturbance, sawn_bundle
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import IDENTITY
from veneerwb.core.sequence.exact import exact
from veneerwb.core.sequence.picture import FLIPS, unflipped
from veneerwb.core.sequence.proof import prove_sequence

WIDTH, LENGTH, COUNT = 200.0, 520.0, 8
AGAIN = (2, 4)
FIGURES = ("cathedral", "ripple", "crotch", "burl")


@cache
def shots(figure, seed=11, surfaces=9):
    """Photographs of each surface, of AGAIN two: {surface: [photo, ...]}."""
    sawn = sawn_bundle(
        surfaces, WIDTH, LENGTH, thickness=0.6, mm_per_px=1.0, figure=figure, seed=seed,
        disturb=Disturbance(), backs=[n for n in AGAIN if n < surfaces],
    )
    taken = {leaf.number - 1: [leaf.photo] for leaf in sawn.leaves}
    for n in AGAIN:
        if n < surfaces:
            taken[n].append(sawn.leaf(n).back.photo)  # the face of the next
    return taken


def photos(figure, count=COUNT, **more):
    return [Photo.of(shots(figure, **more)[j][0], 1.0) for j in range(count)]


def bundle(pictures, thickness=0.6):
    leaves = [Leaf(k, Side(picture)) for k, picture in enumerate(pictures, start=1)]
    return Bundle(tuple(leaves), thickness)


@cache
def clean(figure):
    """The proof of leaves as they lie."""
    return prove_sequence(bundle(photos(figure)))


def flipped(pixels, along, across):
    return Photo.of(np.ascontiguousarray(pixels[::along, ::across]), 1.0)


def named(proof):
    return [(s.kind, s.leaf) for s in proof.suspects]


@pytest.mark.parametrize("figure", FIGURES)
def test_a_clean_bundle_is_proved_and_nothing_accused(figure):
    proof = clean(figure)
    assert proof.sure and proof.suspects == [] and proof.proposal == {}
    assert proof.order == list(range(1, COUNT + 1))
    assert proof.text == "The photographs prove the order of the 8 leaves as they are numbered."


@pytest.mark.parametrize("figure", FIGURES)
def test_a_moved_leaf_is_found_and_its_place_and_number_proposed(figure):
    pictures = photos(figure)
    pictures.insert(1, pictures.pop(5))
    proof = prove_sequence(bundle(pictures))
    assert named(proof) == [("out of place", 2)] and proof.sure
    assert (proof.suspects[0].values["before"], proof.suspects[0].values["after"]) == (6, 7)
    assert proof.order == [1, 3, 4, 5, 6, 2, 7, 8]
    assert proof.proposal == {3: 2, 4: 3, 5: 4, 6: 5, 2: 6}


@pytest.mark.parametrize("figure", FIGURES)
def test_a_missing_leaf_is_found(figure):
    pictures = photos(figure, COUNT + 1)
    del pictures[4]
    proof = prove_sequence(bundle(pictures))
    assert named(proof) == [("missing", 4)] and proof.sure
    assert "a gap, or one thicker leaf" in proof.suspects[0].text


@pytest.mark.parametrize("figure", FIGURES)
def test_a_leaf_turned_over_is_found_and_registered_mirrored(figure):
    pictures, seen = photos(figure), shots(figure)
    pictures[3] = flipped(seen[4][1], 1, -1)  # its back shows the next surface
    proof = prove_sequence(bundle(pictures))
    assert named(proof) == [("turned", 4)] and proof.sure
    assert proof.order == list(range(1, COUNT + 1))
    assert [n for n, motion in proof.registers.items() if motion.mirrored] == [4]


@pytest.mark.parametrize("figure", FIGURES)
def test_a_leaf_end_for_end_is_found_and_registered_so(figure):
    pictures, seen = photos(figure), shots(figure)
    pictures[6] = flipped(seen[6][0], -1, -1)
    proof = prove_sequence(bundle(pictures))
    assert named(proof) == [("end for end", 7)] and proof.sure
    upright = clean(figure).registers[7]
    corners = np.array([(0, 0), (WIDTH, 0), (WIDTH, LENGTH)])
    there = (WIDTH, LENGTH) - upright.apply(corners)
    assert np.abs(proof.registers[7].apply(corners) - there).max() < 1.5


def test_a_leaf_turned_over_end_over_end_is_a_turned_one():
    pictures, seen = photos("burl"), shots("burl")
    pictures[3] = flipped(seen[4][0], -1, 1)
    proof = prove_sequence(bundle(pictures))
    assert named(proof) == [("turned", 4)]
    assert "end over end" in proof.suspects[0].text
    assert proof.registers[4].mirrored


@pytest.mark.parametrize("figure", FIGURES)
def test_a_leaf_photographed_twice_is_found(figure):
    pictures, seen = photos(figure), shots(figure)
    pictures.insert(7, Photo.of(seen[2][1], 1.0))
    proof = prove_sequence(bundle(pictures))
    assert named(proof) == [("duplicate", 8)] and proof.sure
    assert proof.suspects[0].values["other"] == 3
    assert proof.order == [1, 2, 3, 8, 4, 5, 6, 7, 9]


@pytest.mark.parametrize("figure", FIGURES)
def test_a_foreign_leaf_is_found_and_has_no_place_and_no_register(figure):
    pictures = photos(figure)
    pictures[2] = Photo.of(shots(figure, seed=12, surfaces=4)[2][0], 1.0)
    proof = prove_sequence(bundle(pictures))
    assert named(proof) == [("foreign", 3)] and proof.sure
    assert 3 not in proof.order and 3 not in proof.registers


@pytest.mark.parametrize("figure", ["cathedral", "burl"])
def test_a_change_of_thickness_is_found(figure):
    seen = shots(figure, surfaces=15)
    at = [0, 1, 2, 3, 4, 6, 8, 10, 12, 14]
    proof = prove_sequence(bundle([Photo.of(seen[j][0], 1.0) for j in at]))
    assert named(proof) == [("thickness", 5)] and proof.sure
    assert 1.3 < proof.suspects[0].values["times"] < 5


def test_the_same_photograph_twice_is_said_to_be_that():
    pictures = photos("ripple")
    for again, place in ((pictures[2], 3), (Photo.of(pictures[2].pixels.copy(), 1.0), 6)):
        twice = [*pictures[:place], again, *pictures[place:]]
        proof = prove_sequence(bundle(twice))
        assert named(proof) == [("duplicate", place + 1)]
        assert proof.suspects[0].text == f"Leaves {place + 1} and 3 are the same photograph."
        assert proof.likeness[2, place] == pytest.approx(1.0)
        assert proof.rough[place + 1] == proof.rough[3]


def test_of_the_same_photograph_twice_the_one_out_of_place_is_accused():
    pictures = photos("burl")
    pictures.insert(1, pictures[6])
    assert named(prove_sequence(bundle(pictures))) == [("duplicate", 2)]


def test_a_reversed_or_differently_numbered_bundle_is_as_good():
    pictures = photos("crotch")
    proof = prove_sequence(bundle(pictures[::-1]))
    assert proof.suspects == [] and proof.order == list(range(1, COUNT + 1))
    numbers = (3, 5, 6, 9, 12, 13, 40, 41)
    proof = prove_sequence(Bundle(tuple(map(Leaf, numbers, map(Side, pictures))), 0.6))
    assert proof.suspects == [] and proof.order == list(numbers)
    assert proof.registers[3] == IDENTITY and set(proof.registers) == set(numbers)


def test_a_shuffled_bundle_is_put_in_order():
    places = [5, 2, 7, 0, 3, 6, 1, 4]
    pictures = photos("burl")
    proof = prove_sequence(bundle([pictures[j] for j in places]))
    shown = [places[n - 1] for n in proof.order]
    assert shown in (list(range(COUNT)), list(range(COUNT))[::-1])
    assert {s.kind for s in proof.suspects} == {"out of place"}


def test_registers_follow_the_disturbances_of_the_photographs():
    still = sawn_bundle(
        6, WIDTH, LENGTH, thickness=0.001, mm_per_px=1.0, figure="burl", seed=4,
        disturb=Disturbance(),
    )
    proof = prove_sequence(bundle([leaf.face.image for leaf in still.leaves]))
    corners = np.array([(0, 0), (WIDTH, 0), (0, LENGTH), (WIDTH, LENGTH)])
    for leaf in still.leaves:
        wanted = leaf.register.apply(corners)
        assert np.abs(proof.rough[leaf.number].apply(corners) - wanted).max() < 1.0
        assert np.abs(proof.registers[leaf.number].apply(corners) - wanted).max() < 0.05


def test_neighbours_that_lie_wrong_in_different_ways_are_named_and_laid_right():
    pictures = photos("burl")
    right = clean("burl").registers
    ways = {4: "turned", 5: "both", 6: "end for end"}
    for number, way in ways.items():
        pictures[number - 1] = flipped(pictures[number - 1].pixels, *FLIPS[way])
    proof = prove_sequence(bundle(pictures))
    assert named(proof) == [("turned", 4), ("turned", 5), ("end for end", 6)]
    corners = np.array([(0, 0), (WIDTH, 0), (0, LENGTH), (WIDTH, LENGTH)])
    for number, motion in right.items():
        there = unflipped(ways.get(number, ""), WIDTH, LENGTH).apply(motion.apply(corners))
        assert np.abs(proof.rough[number].apply(corners) - there).max() < 5.0
        assert np.abs(proof.registers[number].apply(corners) - there).max() < 1e-6


@pytest.mark.parametrize("way", ["turned", "end for end"])
def test_registers_of_a_leaf_that_lies_wrong_are_as_exact(way):
    """As those of the same photographs with that leaf laid right."""
    pictures = photos("cathedral")
    right = clean("cathedral").registers
    pictures[3] = flipped(pictures[3].pixels, *FLIPS[way])
    proof = prove_sequence(bundle(pictures))
    corners = np.array([(0, 0), (WIDTH, 0), (0, LENGTH), (WIDTH, LENGTH)])
    for number, motion in right.items():
        there = motion.apply(corners)
        if number == 4:
            there = unflipped(way, WIDTH, LENGTH).apply(there)
        assert np.abs(proof.registers[number].apply(corners) - there).max() < 1e-6


def test_equal_bundles_give_equal_proofs():
    one, other = clean("burl"), prove_sequence(bundle(photos("burl")))
    assert one == other and np.array_equal(one.likeness, other.likeness)
    assert np.array_equal(one.likeness, one.likeness.T)


# --- what cannot be told -----------------------------------------------------------------------


@pytest.mark.parametrize("fault", ["none", "moved", "missing", "foreign"])
def test_a_straight_stripe_is_too_plain_to_tell(fault):
    pictures = photos("stripe", COUNT + 1)
    if fault == "moved":
        pictures.insert(1, pictures.pop(5))
    elif fault == "foreign":
        pictures[2] = Photo.of(shots("stripe", seed=12, surfaces=4)[2][0], 1.0)
    elif fault == "missing":
        del pictures[4]
    proof = prove_sequence(bundle(pictures))
    assert not proof.sure and proof.suspects == [] and proof.proposal == {}
    assert proof.text.startswith("The figure is too plain to tell")
    assert proof.order == list(range(1, len(pictures) + 1))


def texture(seed, rows=400, columns=180, across=3.0, along=5.0):
    rng = np.random.default_rng(seed)
    field = gaussian_filter(rng.standard_normal((rows, columns)), (along, across))
    return field / field.std()


def shown(field):
    return Photo.of(np.clip(120 + 30 * field[..., None], 0, 255).repeat(3, 2).astype(np.uint8), 1.0)


def test_unrelated_pictures_are_no_bundle_and_none_is_accused():
    proof = prove_sequence(bundle([shown(texture(seed)) for seed in range(6)]))
    assert not proof.sure and proof.suspects == []
    assert proof.text.startswith("No two of these photographs show the same figure")


@pytest.mark.parametrize("count", [5, 11])
def test_photographs_of_one_leaf_prove_no_order(count):
    field, rng = texture(3, 460, 240), np.random.default_rng(5)
    taken = []
    for _ in range(count):
        row, column = rng.integers(0, 60, 2)
        cut = field[row : row + 400, column : column + 180]
        taken.append(shown(cut + rng.normal(0, 0.3, cut.shape)))
    proof = prove_sequence(bundle(taken))
    assert not proof.sure and proof.suspects == [] and proof.order == list(range(1, count + 1))
    assert proof.text.startswith("The order cannot be told")


def volume(leaves, deep):
    """Smooth noise in three dimensions, which no log of ours is made of."""
    rng = np.random.default_rng(7)
    block = rng.standard_normal((leaves + 24, 400, 180), dtype=np.float32)
    block = gaussian_filter(block, (deep, 5, 3))[12:-12]
    return [shown(layer) for layer in block / block.std()]


def test_slices_of_smooth_noise_are_proved_too():
    layers = volume(14, 2.5)
    assert named(prove_sequence(bundle(layers[:9]))) == []
    assert named(prove_sequence(bundle([*layers[:4], *layers[5:10]]))) == [("missing", 4)]
    moved = [*layers[:2], layers[7], *layers[2:7], *layers[8:10]]
    assert named(prove_sequence(bundle(moved))) == [("out of place", 3)]
    thick = [layers[j] for j in (0, 1, 2, 3, 4, 6, 8, 10, 12)]
    assert named(prove_sequence(bundle(thick))) == [("thickness", 5)]


def test_a_figure_that_equals_its_mirror_says_that_turning_cannot_be_told():
    mirrored = [
        shown(np.concatenate([half, half[:, ::-1]], axis=1))
        for half in (photo.pixels[:, :90, 0] / 30.0 - 4 for photo in volume(8, 2.5))
    ]
    mirrored[3] = Photo.of(np.ascontiguousarray(mirrored[3].pixels[:, ::-1]), 1.0)
    proof = prove_sequence(bundle(mirrored))
    assert proof.sure and proof.suspects == []
    assert "turned over cannot be told" in proof.text


# --- bad input ---------------------------------------------------------------------------------


def test_a_figure_alike_both_ways_up_has_a_leaf_that_lies_wrong_named_and_no_foreign_one():
    """Its halves mirror each other, so that turned over looks like end for end."""
    fields = [p.pixels[..., 0].astype(float) for p in volume(11, 2.5)]
    layers = [shown((f + f[::-1] - 240) / 40) for f in fields]
    for k, kind in ((4, "end for end"), (4, "turned"), (9, "turned")):
        wrong = layers[k + (kind == "turned")]
        pictures = [*layers[:k], flipped(wrong.pixels, -1, -1), *layers[k + 1 : 10]]
        proof = prove_sequence(bundle(pictures))
        assert named(proof) == [(kind, k + 1)]
        assert "looks like one that lies end for end" in proof.text


def test_one_two_and_three_leaves_prove_no_order():
    pictures = photos("burl", 3)
    one = prove_sequence(bundle(pictures[:1]))
    assert (one.order, one.suspects, one.registers, one.sure) == ([1], [], {1: IDENTITY}, False)
    assert one.text == "One leaf has no order to prove."
    two = prove_sequence(bundle(pictures[:2]))
    assert two.suspects == [] and not two.sure and set(two.registers) == {1, 2}
    assert two.text == "2 leaves are too few to prove an order."
    three = prove_sequence(bundle(pictures))
    assert three.suspects == [] and not three.sure


def test_two_leaves_of_which_one_is_the_other_or_lies_wrong():
    pictures = photos("burl", 3)
    twice = prove_sequence(bundle([pictures[0]] * 2))
    assert named(twice) == [("duplicate", 2)]
    assert twice.text.startswith("All 2 photographs are one and the same")
    proof = prove_sequence(bundle([pictures[0], pictures[0], pictures[1], pictures[2]]))
    assert named(proof) == [("duplicate", 2)] and not proof.sure
    assert proof.text.endswith("What is said of leaf 2 holds without it.")


def test_a_black_frame_is_named():
    pictures = photos("burl", 5)
    pictures[2] = Photo.of(np.zeros((520, 200, 3), np.uint8), 1.0)
    with pytest.raises(VeneerError, match="leaf 3 shows no figure"):
        prove_sequence(bundle(pictures))


def test_a_leaf_of_absurd_scale_is_refused_before_memory_goes(monkeypatch):
    pictures = photos("burl", 5)
    pictures[3] = Photo.of(np.zeros((1000, 400, 3), np.uint8), 10.0)
    monkeypatch.setattr("veneerwb.core.sequence.proof.picture", None)
    with pytest.raises(VeneerError, match="leaf 4 would be 4 x 10 m large"):
        prove_sequence(bundle(pictures))


def test_a_photograph_that_lies_across_is_named():
    pictures = photos("burl", 5)
    pictures[3] = Photo.of(np.ascontiguousarray(np.rot90(pictures[3].pixels)), 1.0)
    with pytest.raises(VeneerError, match="leaf 4 lies across"):
        prove_sequence(bundle(pictures))


def test_other_scales_and_sizes_make_no_difference():
    pictures = photos("burl")
    pictures[2] = Photo.of(np.ascontiguousarray(pictures[2].pixels[20:, :-15]), 1.0)
    halved = pictures[5].pixels.reshape(260, 2, 100, 2, 3).mean(axis=(1, 3)).astype(np.uint8)
    pictures[5] = Photo.of(halved, 2.0)
    pictures[6] = Photo.of(pictures[6].pixels.repeat(2, axis=0).repeat(2, axis=1), 0.5)
    proof = prove_sequence(bundle(pictures))
    assert proof.sure and proof.suspects == []


def test_photographs_of_hardly_any_pixels_are_refused():
    tiny = [Photo.of(p.pixels[:8, :6].copy(), 1.0) for p in photos("burl", 5)]
    with pytest.raises(VeneerError, match="shows no figure"):
        prove_sequence(bundle(tiny))


def test_progress_ends_at_one():
    told = []
    prove_sequence(bundle(photos("burl", 4)), told.append)
    assert told == sorted(told) and told[-1] == 1.0
    assert len([share for share in told if share <= 0.3]) >= 4  # while they are read, too


def test_a_large_photograph_that_lies_wrong_is_made_smaller_and_keeps_its_place(monkeypatch):
    pictures = photos("burl")
    pictures[3] = flipped(pictures[3].pixels, *FLIPS["turned"])
    proof = prove_sequence(bundle(pictures))
    whole = proof.registers[4]
    monkeypatch.setattr("veneerwb.core.sequence.exact.MEGAPIXELS", 0.06)  # of 0.10
    smaller = exact(proof.bundle, proof.order, proof.rough, proof.ways)[4]
    corners = np.array([(0, 0), (WIDTH, 0), (0, LENGTH), (WIDTH, LENGTH)])
    assert 0 < np.abs(smaller.apply(corners) - whole.apply(corners)).max() < 0.3
