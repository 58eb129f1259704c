"""In how many years a stand brings a harvest, and in which."""

import numpy as np
from numpy.typing import ArrayLike, NDArray

from gardencanvas.fit.stands import Stand
from gardencanvas.measures.yields.draws import weather
from gardencanvas.season.chance import normal_below

Bools = NDArray[np.bool_]


def chance(stand: Stand) -> float:
    """Share of years in which it brings a harvest, before frost or the grower ends it.

    Reckoned by simulated years where weather leaves it in doubt; 0 or 1 where it does not.
    """
    outlook, out = stand.outlook, stand.times.out
    ended = stand.planting.end
    if ended is not None and outlook.ready > ended:
        return 0.0
    odds = outlook.odds
    if odds is not None:
        return odds.ripens
    frost = outlook.killing_frost
    alive = frost is None or outlook.lasting or outlook.ready < frost
    return float(outlook.warm_enough and alive and outlook.ready <= out)


def ripens(chances: ArrayLike) -> Bools:
    """In which of the drawn years stands of these chances bring one, shape (draws, stands).

    They fail in the coldest years first.
    """
    rank = np.array([normal_below(float(z)) for z in weather()])
    return np.asarray(rank[:, None] > 1.0 - np.asarray(chances, dtype=np.float64))
