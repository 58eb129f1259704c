"""What a warming cover does to the plants under it."""

from gardencanvas.crops.model import Basis, Quantity

# Fleece raises mean and maximum air temperature for certain; the mean of the daily minima rose by .3 to
# 3.3 °F in the trials of the North Willamette station, and on some clear nights not at all.
WARMER_C = Quantity(
    low=1.0,
    mid=2.0,
    high=3.0,
    source="common-practice",
    basis=Basis.PRACTICE,
    note="daily mean under a light fleece; cloche and frame are taken as no better",
)
SHIELDS_C = Quantity(
    low=0.2,
    mid=1.0,
    high=1.8,
    source="osu-row-covers",
    note="rise of the mean minimum, in the middle of the trials' .3 to 3.3 °F",
)
