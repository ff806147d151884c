# SPDX-License-Identifier: LGPL-2.1-or-later
"""How sentences are filled: names, numbers, the language and the decimal sign spoken."""

import pytest

from veneerwb import words


@pytest.fixture
def speaking():
    """Has a language spoken until the test is over."""
    yield words.speak
    words.speak()


@pytest.mark.parametrize(("value", "text"), [
    (3.5, "3.5"), (12.0, "12"), (0.6051, "0.605"), (-0.0001, "0"), (1e300, "1e+300"),
    (7, "7"), (True, "True"), ("oak", "oak"), (2.0006, "2.001"),
])  # fmt: skip
def test_a_number_is_written_as_a_rule_is_read(value, text):
    assert words.say("{value}", value=value) == text


def test_a_template_may_say_how_a_number_is_written():
    said = words.say("{a:.2f} deg, {b:.0f} mm, {c:03d}, {d:>5}", a=30.1, b=600.4, c=7, d="left")
    assert said == "30.10 deg, 600 mm, 007,  left"


def test_numbers_have_the_decimal_sign_and_sentences_the_language_spoken(speaking):
    speaking({"{a} of {b}": "{b:.1f} weniger {a}"}.get, lambda: ",")
    assert words.say("{a} of {b}", a=2.5, b=10.0) == "10,0 weniger 2,5"
    assert words.figure(2.5) == "2,5" and words.number(2.5) == "2.5"  # data keep the point
    assert words.word("") == ""  # Qt has the head of its catalogue for it
    speaking()
    assert words.say("{a} of {b}", a=2.5, b=10.0) == "2.5 of 10"


def test_lengths_that_are_kept_as_text_are_in_the_unit_spoken(speaking):
    assert words.in_unit(2.5412) == "2.5 mm" and words.in_unit(0.125, 2) == "0.12 mm"
    speaking(length=lambda mm: f"{mm / 25.4:.3f} in")
    assert words.in_unit(25.4) == "1.000 in"
    speaking()
    assert words.in_unit(3.0) == "3 mm"


def test_what_is_filled_in_is_not_filled_again():
    assert words.say("{name} is gone.", name="{leaf} {0}") == "{leaf} {0} is gone."
