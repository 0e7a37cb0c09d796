"""Answers that more than one resource gives: sheets and drawings as files, pieces that were encoded before."""
