"""Reports the sample job with a switch on numpy and matplotlib, its layout known beforehand: plain_report.py JOB OUT.pdf

Fits mean, twenty harmonics and the frequency to each channel, compares levels, distortion and shape of the states with
those before the work, and writes six plain pages. No check of the files, no uncertainties, no decisions.
"""
import csv
import pathlib
import sys

import matplotlib

matplotlib.use("pdf")
import matplotlib.pyplot as plt
import numpy as np
from matplotlib.backends.backend_pdf import PdfPages

HARMONICS = 20
PAGE = (8.27, 11.69)


def basis(phase):
    """Columns 1, cos, sin, cos 2, sin 2, .. at phases in rad."""
    k = np.arange(1, HARMONICS + 1)
    angles = np.outer(phase, k)
    columns = np.empty((len(phase), 2 * HARMONICS + 1))
    columns[:, 0] = 1
    columns[:, 1::2] = np.cos(angles)
    columns[:, 2::2] = np.sin(angles)
    return columns


def fit(time, volts, frequency):
    """Coefficients and frequency by Gauss-Newton steps."""
    t = time - time.mean()
    for _ in range(4):
        matrix = basis(2 * np.pi * frequency * t)
        coefficients = np.linalg.lstsq(matrix, volts, rcond=None)[0]
        k = np.arange(1, HARMONICS + 1)
        turned = np.zeros_like(coefficients)
        turned[1::2] = k * coefficients[2::2]
        turned[2::2] = -k * coefficients[1::2]
        slope = 2 * np.pi * t * (matrix @ turned)
        both = np.column_stack([matrix, slope])
        frequency += np.linalg.lstsq(both, volts, rcond=None)[0][-1]
    return coefficients, frequency


def figures(path, frequency):
    """Figures of one capture."""
    time, given, output = np.loadtxt(path, delimiter=",", skiprows=1, unpack=True)
    first, frequency = fit(time, output, frequency)
    second, _ = fit(time, given, frequency)
    amplitudes = np.hypot(first[1::2], first[2::2])
    level = np.sqrt((amplitudes**2).sum() / 2)
    phase = np.arctan2(-first[2], first[1]) + np.pi / 2
    cycle = basis(2 * np.pi * np.arange(512) / 512 - phase) @ first
    drive = basis(2 * np.pi * np.arange(512) / 512 - phase) @ second
    swing = cycle - first[0]
    return {
        "frequency": frequency,
        "level": 20 * np.log10(level),
        "gain": 20 * np.log10(amplitudes[0] / np.hypot(second[1], second[2])),
        "thd": 100 * np.sqrt((amplitudes[1:] ** 2).sum()) / amplitudes[0],
        "crest": 20 * np.log10(np.abs(swing).max() / level),
        "asymmetry": 100 * (swing.max() + swing.min()) / (swing.max() - swing.min()),
        "noise": np.std(output - basis(2 * np.pi * frequency * (time - time.mean())) @ first),
        "harmonics": 20 * np.log10(amplitudes / amplitudes[0] + 1e-9),
        "cycle": swing,
        "input": drive - second[0],
    }


def null_depth(one, other):
    """Remainder of two cycles in dB over all shifts, from their spectra."""
    a, b = np.fft.rfft(one), np.fft.rfft(other)
    overlap = np.fft.irfft(a * np.conj(b)).max()
    return 10 * np.log10(max(1e-12, 1 - overlap**2 / ((one**2).sum() * (other**2).sum())))


def table(page, title, head, rows):
    axes = page.add_subplot()
    axes.axis("off")
    axes.set_title(title)
    drawn = axes.table(cellText=rows, colLabels=head, loc="upper center")
    drawn.auto_set_font_size(False)
    drawn.set_fontsize(7)


def main(job, out):
    with open(job / "captures.csv", newline="") as lines:
        rows = list(csv.DictReader(lines))
    waves = [r for r in rows if r["file"].startswith("captures/")]
    found = [(r["state"], float(r["gain"]), figures(job / r["file"], 400.0)) for r in waves]
    traces = {
        r["file"]: np.genfromtxt(job / r["file"], delimiter=",", skip_header=2)
        for r in rows
        if r["file"].startswith("tracer/")
    }
    states = list(dict.fromkeys(s for s, _, _ in found))
    gains = sorted({g for _, g, _ in found})
    names = ["level", "gain", "thd", "crest", "asymmetry"]

    def mean(state, gain, name):
        return np.mean([f[name] for s, g, f in found if s == state and g == gain])

    def cycle(state, gain):
        return next(f for s, g, f in found if s == state and g == gain)

    with PdfPages(out) as pdf:
        page = plt.figure(figsize=PAGE)
        cells = [[s, f"{g:g}"] + [f"{f[n]:.3f}" for n in names] + [f"{f['noise']:.2g}"] for s, g, f in found]
        table(page, "Captures", ["state", "gain %"] + names + ["noise"], cells)
        pdf.savefig(page)

        page = plt.figure(figsize=PAGE)
        cells = []
        for state in states[1:]:
            for gain in gains:
                change = [mean(state, gain, n) - mean(states[0], gain, n) for n in names]
                depth = null_depth(cycle(states[0], gain)["cycle"], cycle(state, gain)["cycle"])
                cells.append([state, f"{gain:g}"] + [f"{c:+.3f}" for c in change] + [f"{depth:.1f}"])
        table(page, "Changes from " + states[0], ["state", "gain %"] + names + ["null dB"], cells)
        pdf.savefig(page)

        page, panels = plt.subplots(len(gains), 2, figsize=PAGE)
        for row, gain in zip(panels, gains):
            for state in states:
                f = cycle(state, gain)
                row[0].plot(np.arange(512) / 512, f["cycle"], label=state)
                row[1].plot(f["input"], f["cycle"])
            row[0].set_ylabel(f"{gain:g} %")
        panels[0][0].legend()
        page.suptitle("Cycles and transfer curves")
        pdf.savefig(page)

        page, panels = plt.subplots(len(gains), 1, figsize=PAGE)
        for panel, gain in zip(panels, gains):
            for i, state in enumerate(states):
                panel.bar(np.arange(2, 11) + 0.25 * i, cycle(state, gain)["harmonics"][1:10] + 100, 0.25, bottom=-100)
            panel.set_ylabel(f"{gain:g} %, dBc")
        page.suptitle("Harmonics")
        pdf.savefig(page)

        page, panels = plt.subplots(len(names), 1, figsize=PAGE)
        for panel, name in zip(panels, names):
            for state in states:
                panel.plot(gains, [mean(state, g, name) for g in gains], "o-", label=state)
            panel.set_ylabel(name)
        panels[0].legend()
        page.suptitle("Over the gain control")
        pdf.savefig(page)

        page, panel = plt.subplots(figsize=PAGE)
        for name, trace in traces.items():
            panel.semilogy(trace[:, 0], np.abs(trace[:, 1]), label=name)
        panel.legend()
        page.suptitle("Traced devices")
        pdf.savefig(page)


main(pathlib.Path(sys.argv[1]), sys.argv[2])
