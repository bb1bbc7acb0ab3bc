"""Where the bundle starts."""

import sys

from calibrator.__main__ import main

sys.exit(main())
