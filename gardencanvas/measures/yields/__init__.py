"""Yields of beds: how stands share light, what they give, and the ratios of growing them together."""
