"""One line that says what just happened, or what is wrong."""

from __future__ import annotations

from textual.widgets import Static


class Saying(Static):
    """A sentence at the foot of a page; what is wrong begins with a mark."""

    def __init__(self) -> None:
        super().__init__("", markup=False)
        self.says = ""

    def tell(self, sentence: str) -> None:
        """Say what happened."""
        self._put(sentence, wrong=False)

    def warn(self, sentence: str) -> None:
        """Say what is wrong, and what would be right."""
        self._put(f"! {sentence}" if sentence else "", wrong=True)

    def _put(self, sentence: str, wrong: bool) -> None:
        self.says = sentence
        self.set_class(wrong, "wrong")
        self.update(sentence)
