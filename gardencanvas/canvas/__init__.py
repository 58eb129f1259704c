"""The drawn plan: scene, items, symbols, view and tools."""
