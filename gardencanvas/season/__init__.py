"""Climate, frost and growth: how wide, tall and deep a crop is on a date, and when it is harvested."""
