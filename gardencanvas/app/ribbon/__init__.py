"""The season ribbon: bars of plantings over the year, with the date cursor."""
