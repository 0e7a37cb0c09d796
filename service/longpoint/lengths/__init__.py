from longpoint.lengths.exact import Fraction, Real

__all__ = ["Fraction", "Real"]
