"""Turns the core rooms' codes and numbers into sentences, without Qt, ready for translation."""
