"""The catalogue: its files lie here, one per pattern; `catalogue()` reads them."""

from core.movements.lookup import Catalogue, catalogue

__all__ = ["Catalogue", "catalogue"]
