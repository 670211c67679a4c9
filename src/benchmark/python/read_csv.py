"""Times the C reader of a data-frame library on the file of ReadingBenchmark: read_csv.py FILE"""
import sys
import time

import pandas

times = []
for _ in range(6):
    start = time.perf_counter()
    frame = pandas.read_csv(sys.argv[1], engine="c")
    times.append(time.perf_counter() - start)
print(f"pandas {pandas.__version__}, {len(frame)} rows: " + " ".join(f"{1000 * t:.0f}" for t in times) + " ms")
