"""Paper needs the application that fonts need: the one all tests share, whichever room is tested first."""

import pytest


@pytest.fixture(autouse=True)
def _fonts(qapp):
    return qapp
