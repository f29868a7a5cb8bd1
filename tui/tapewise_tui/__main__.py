"""Start the command line: ``python -m tapewise_tui``."""

import sys

from tapewise_tui.cli import main

sys.exit(main())
