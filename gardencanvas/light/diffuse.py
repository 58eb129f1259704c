"""Which share of the light comes from the whole sky and not straight from the sun."""

from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from gardencanvas.garden.site import Climate

Floats = NDArray[np.float64]

USUAL = 0.5  # temperate climates, cloud and clear sky together; common practice where no range is known
K_RS = 0.16  # inland (FAO-56 eq. 50)


@lru_cache(maxsize=64)
def diffuse_share(climate: Climate) -> Floats:
    """Diffuse share of each month's light, shape (12,).

    From the daily range of temperature: clearness ``Kt = kRs √(Tmax − Tmin)`` (Hargreaves, FAO-56 eq. 50) and
    the monthly mean diffuse share ``1.00 − 1.13 Kt`` (Page 1961, in Duffie & Beckman, Solar Engineering of
    Thermal Processes; from memory), held within 0.2–0.9. A half where the range is not known.
    """
    if climate.min_c is None or climate.max_c is None:
        return np.full(12, USUAL)
    spread = np.maximum(np.asarray(climate.max_c) - np.asarray(climate.min_c), 0.0)
    return np.asarray(np.clip(1.0 - 1.13 * K_RS * np.sqrt(spread), 0.2, 0.9))
