/* Loaded before the C library: after each sync of a file, keeps a copy of what is then certain to be on the disk. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <fcntl.h>
#include <limits.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

static void keep_copy(int fd) {
  const char *folder = getenv("SYNCED_COPIES");
  char link[64], path[PATH_MAX], copy[PATH_MAX + 64], draft[PATH_MAX + 96];
  if (folder == NULL) return;
  snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
  ssize_t length = readlink(link, path, sizeof path - 1);
  if (length <= 0) return;
  path[length] = 0;
  const char *name = strrchr(path, '/');
  if (name == NULL || strstr(name, ".sqlite") == NULL) return;
  /* A disk that forgets the log of the database, for the control. */
  if (getenv("SYNCED_COPIES_FORGET_LOG") != NULL && strstr(name, "-wal") != NULL) return;
  snprintf(copy, sizeof copy, "%s%s", folder, name);
  snprintf(draft, sizeof draft, "%s.%d", copy, getpid());
  int from = open(path, O_RDONLY), to = open(draft, O_WRONLY | O_CREAT | O_TRUNC, 0600);
  if (from >= 0 && to >= 0) {
    static __thread char block[1 << 16];
    ssize_t got;
    int is_whole = 1;
    while ((got = read(from, block, sizeof block)) > 0) is_whole &= write(to, block, (size_t)got) == got;
    if (is_whole && got == 0) rename(draft, copy);
  }
  if (from >= 0) close(from);
  if (to >= 0) close(to);
}

int fsync(int fd) {
  int (*real)(int) = (int (*)(int))dlsym(RTLD_NEXT, "fsync");
  int result = real(fd);
  if (result == 0) keep_copy(fd);
  return result;
}

int fdatasync(int fd) {
  int (*real)(int) = (int (*)(int))dlsym(RTLD_NEXT, "fdatasync");
  int result = real(fd);
  if (result == 0) keep_copy(fd);
  return result;
}
