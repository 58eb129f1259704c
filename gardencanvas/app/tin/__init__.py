"""The parts of the seed tin: its rows, list, filters and the trying of crops at a place."""
