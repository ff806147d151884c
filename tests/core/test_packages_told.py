# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is said where packages are missing, or there and broken."""

import json
import sys

import pytest

from veneerwb import packages

BROKEN = {
    "for_another_numpy": "raise ValueError('numpy.dtype size changed')",
    "without_its_library": "raise ImportError('no libgeos', name='without_its_library')",
    "without_another": "import not_there_either",
}


@pytest.fixture
def needs(tmp_path, monkeypatch):
    """Makes packages that break so as they are imported; from then on those named are needed."""

    def these(*names):
        for name, body in BROKEN.items():
            (tmp_path / f"{name}.py").write_text(body)
        monkeypatch.syspath_prepend(tmp_path)
        wanted = tuple(packages.Package(name, f"{name}-pip", f"python3-{name}") for name in names)
        monkeypatch.setattr(packages, "NEEDED", wanted)

    return these


@pytest.mark.parametrize("broken", BROKEN)
def test_one_that_is_broken_is_not_said_to_be_missing(needs, broken):
    needs("json", broken, "not_there")
    said = packages.told(ImportError("No module named 'not_there'", name="not_there"))
    assert said.startswith("This needs not_there-pip, which FreeCAD's Python does not have")
    assert "not_there" in said.rpartition(": ")[2]


def test_one_that_is_broken_is_said_to_be_with_the_reason(needs):
    needs("without_its_library")
    said = packages.told(ImportError("no libgeos", name="without_its_library.part"))
    assert said.startswith("The Python package without_its_library-pip is there but cannot be")
    assert "(no libgeos)" in said
    assert "is there but cannot be" in packages.told(ImportError(name="without_its_library"))


def test_nothing_is_said_of_what_is_no_package_of_ours(needs):
    needs("json")
    assert packages.told(ImportError("No module named 'other'", name="other")) == ""
    assert packages.told(ImportError("without a name")) == ""


def test_what_only_dxf_files_need_is_told_where_it_is_missing(needs, monkeypatch):
    needs()
    monkeypatch.setitem(sys.modules, "ezdxf", None)
    said = packages.told(ImportError("No module named 'ezdxf'", name="ezdxf"))
    assert said.startswith("This needs ezdxf, which FreeCAD's Python does not have")


@pytest.mark.parametrize("broken", BROKEN)
def test_what_is_raised_while_a_package_is_loaded_is_about_that_package(needs, broken):
    needs(broken)
    try:
        __import__(broken)
    except Exception as error:
        assert f"The Python package {broken}-pip is there but cannot be" in packages.told(error)
    else:
        raise AssertionError("it can be loaded")


def test_what_a_package_raises_at_work_is_not_about_its_loading(needs):
    needs("json")
    with pytest.raises(ValueError) as found:
        json.loads("no")
    assert packages.told(found.value) == ""
