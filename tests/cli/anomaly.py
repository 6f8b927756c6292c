#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""What goes wrong around the program: full disks, closed pipes, missing rights, little memory.

anomaly.py PROGRAM --data DIR

No case may end by a signal, none may leave a half-written file, and a result that did not arrive is never status 0."""
import argparse
import os
import pty
import resource
import signal
import subprocess
import sys
import tempfile
import unittest

PROGRAM, DATA, JOB = "", "", ""


def env(**more):
    keep = {name: os.environ[name] for name in ("PATH", "ASAN_OPTIONS", "LSAN_OPTIONS", "UBSAN_OPTIONS") if name in os.environ}
    return {**keep, "RAFTERPROOF_DATA": DATA, **more}


def run(*words, **how):
    how = {"stdout": subprocess.PIPE, "stderr": subprocess.PIPE, "env": env(), "timeout": 60, **how}
    return subprocess.run([PROGRAM, *words], stdin=subprocess.DEVNULL, check=False, **how)


def sanitized():
    with open(PROGRAM, "rb") as file:
        return b"__asan_init" in file.read()


class Output(unittest.TestCase):
    COMMANDS = (["check", "{job}"], ["check", "{job}", "--format", "json"], ["step"], ["step", "--format", "json"],
                ["fields"], ["fields", "--format", "json"], ["guide"], ["guide", "--format", "json"], ["help"],
                ["help", "--format", "json"], ["--version"], ["--version", "--format", "json"])

    def each(self):
        return [[word.format(job=JOB) for word in command] for command in self.COMMANDS]

    def test_full_disk(self):
        for words in self.each():
            with open("/dev/full", "wb") as full:
                done = run(*words, stdout=full)
            self.assertEqual(done.returncode, 4, (words, done.stderr))

    def test_full_disk_named(self):
        done = run("check", JOB, "-o", "/dev/full")
        self.assertEqual(done.returncode, 4)
        self.assertIn(b"/dev/full: cannot be written", done.stderr)
        self.assertTrue(os.path.exists("/dev/full"))

    def test_closed_pipe(self):
        for words in self.each():
            reader, writer = os.pipe()
            os.close(reader)
            done = run(*words, stdout=writer)
            os.close(writer)
            self.assertEqual((done.returncode, done.stderr), (4, b""), words)

    def test_closed_stdout(self):
        for words in self.each():
            done = run(*words, stdout=None, preexec_fn=lambda: os.close(1))
            self.assertEqual(done.returncode, 4, words)

    def test_problems_on_full_disk(self):
        with open("/dev/full", "wb") as full:
            done = run("check", "/nonexistent.xml", "--format", "json", stdout=full)
        self.assertEqual(done.returncode, 4)


class Files(unittest.TestCase):
    def setUp(self):
        self.dir = tempfile.TemporaryDirectory()
        self.addCleanup(self.dir.cleanup)

    def path(self, name):
        return os.path.join(self.dir.name, name)

    def test_whole(self):
        done = run("check", JOB, "-o", self.path("a.txt"))
        self.assertIn(done.returncode, (0, 1, 2))
        self.assertEqual(done.stdout, b"")
        with open(self.path("a.txt"), "rb") as file:
            self.assertEqual(file.read(), run("check", JOB).stdout)
        self.assertEqual(os.listdir(self.dir.name), ["a.txt"])
        mask = os.umask(0)
        os.umask(mask)
        self.assertEqual(os.stat(self.path("a.txt")).st_mode & 0o777, 0o666 & ~mask)

    def test_keeps_the_old_one(self):
        with open(self.path("a.txt"), "w", encoding="utf-8") as file:
            file.write("old")

        def small_files():
            signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
            resource.setrlimit(resource.RLIMIT_FSIZE, (1000, 1000))

        done = run("check", JOB, "-o", self.path("a.txt"), preexec_fn=small_files)
        self.assertEqual(done.returncode, 4)
        self.assertEqual(os.listdir(self.dir.name), ["a.txt"])
        with open(self.path("a.txt"), encoding="utf-8") as file:
            self.assertEqual(file.read(), "old")

    def test_through_a_link(self):
        with open(self.path("real.txt"), "w", encoding="utf-8"):
            pass
        os.chmod(self.path("real.txt"), 0o640)
        os.symlink("real.txt", self.path("link.txt"))
        run("check", JOB, "-o", self.path("link.txt"))
        self.assertTrue(os.path.islink(self.path("link.txt")))
        self.assertGreater(os.path.getsize(self.path("real.txt")), 1000)
        self.assertEqual(os.stat(self.path("real.txt")).st_mode & 0o777, 0o640)

    def test_nowhere(self):
        for path in (self.path("no/such/dir/a.txt"), self.dir.name, "/proc/a.txt", ""):
            done = run("check", JOB, "-o", path)
            self.assertIn(done.returncode, (3, 4), path)
            self.assertNotEqual(done.stderr, b"")
        self.assertEqual(os.listdir(self.dir.name), [])

    def test_nothing_written_for_a_bad_job(self):
        done = run("check", JOB, "--set", "roof.pitch=60:12", "-o", self.path("a.txt"))
        self.assertEqual(done.returncode, 3)
        self.assertEqual(os.listdir(self.dir.name), [])

    def test_bad_jobs(self):
        os.mkfifo(self.path("fifo"))
        with open(self.path("empty.xml"), "w", encoding="utf-8"):
            pass
        for path in (self.dir.name, self.path("none.xml"), self.path("fifo"), "/dev/zero", self.path("empty.xml"), ""):
            done = run("check", path)
            self.assertEqual(done.returncode, 3, path)
            self.assertEqual(done.stdout, b"")
            self.assertNotEqual(done.stderr, b"")

    def test_no_library(self):
        for value in ("/nonexistent", "x" * 5000):
            done = run("guide", env=env(RAFTERPROOF_DATA=value))
            self.assertIn(done.returncode, (3, 4))
            done = run("check", JOB, env=env(RAFTERPROOF_DATA=value))
            self.assertIn(done.returncode, (0, 1, 2))
            self.assertIn(b"notes on this covering cannot be printed", done.stdout)


class Terminal(unittest.TestCase):
    def printed(self, **more):
        leader, follower = pty.openpty()
        run("check", JOB, "-o", "/dev/null", env=env(TERM="xterm"))
        done = subprocess.Popen([PROGRAM, "help"], stdin=subprocess.DEVNULL, stdout=follower, env=env(**more))
        os.close(follower)
        text = b""
        while True:
            try:
                part = os.read(leader, 4096)
            except OSError:
                break
            if not part:
                break
            text += part
        done.wait()
        os.close(leader)
        return text

    def test_bold(self):
        self.assertIn(b"\033[1m", self.printed(TERM="xterm"))
        self.assertNotIn(b"\033", self.printed(TERM="xterm", NO_COLOR="1"))
        self.assertNotIn(b"\033", self.printed(TERM="dumb"))
        self.assertNotIn(b"\033", self.printed())
        self.assertNotIn(b"\033", run("help", env=env(TERM="xterm")).stdout)

    def test_job_cannot_move_the_cursor(self):
        done = run("check", JOB, "--set", "job.title=a\033[2Jb\u009b1m\u202ec")
        self.assertNotIn(b"\033", done.stdout + done.stderr)
        self.assertNotIn("\u009b", done.stdout.decode("utf-8"))
        self.assertNotIn("\u202e", done.stdout.decode("utf-8"))


class Memory(unittest.TestCase):
    def test_little(self):
        if sanitized():
            self.skipTest("a sanitizer reserves its own memory")
        seen = set()
        for kib in list(range(256, 6144, 256)) + [8192, 16384, 65536]:
            def little():
                resource.setrlimit(resource.RLIMIT_DATA, (kib << 10, kib << 10))

            # Below some size it is the loader that finds no room.
            if run("nothing", preexec_fn=little).returncode != 3:
                continue
            # Without the library: libxml2 2.9.14 itself crashes where it has no room for the datatypes of RELAX NG.
            for words in (["check", JOB, "--notes", "none"], ["check", JOB, "--format", "json"], ["fields"], ["step"]):
                done = run(*words, preexec_fn=little)
                self.assertIn(done.returncode, (0, 1, 2, 4), (kib, words, done.stderr[-300:]))
                seen.add(done.returncode)
        self.assertIn(4, seen)

    def test_same_bytes(self):
        for words in (["check", JOB], ["check", JOB, "--format", "json"]):
            self.assertEqual(run(*words).stdout, run(*words, env=env(LC_ALL="de_DE.UTF-8", TZ="Asia/Tokyo")).stdout)


def main():
    global PROGRAM, DATA, JOB
    parser = argparse.ArgumentParser()
    parser.add_argument("program")
    parser.add_argument("--data", required=True)
    options = parser.parse_args()
    PROGRAM, DATA = os.path.abspath(options.program), options.data
    JOB = os.path.join(DATA, "examples", "first-shingle.xml")
    unittest.main(argv=sys.argv[:1])


main()
