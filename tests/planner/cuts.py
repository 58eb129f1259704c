"""Hypothesis maker of patterns with a way to cut them."""

from hypothesis import strategies as st

from gardencanvas.planner.succession import Way, most_parts
from tests import strategies


@st.composite
def cuts(draw, most=12):
    """A pattern, a way and a number of parts for which it is large enough."""
    pattern = draw(strategies.patterns().filter(lambda p: p.count > 1))
    ways = [w for w in (Way.ROWS, Way.PARTS) if most_parts(pattern, w) > 1]
    way = draw(st.sampled_from(ways or [Way.PARTS]))
    return (
        pattern,
        way,
        draw(st.integers(min(2, most_parts(pattern, way)), min(most, most_parts(pattern, way)))),
    )
