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
  int to = open(draft, O_WRONLY | O_CREAT | O_TRUNC, 0600);
  if (to < 0) return;
  char block[1 << 14];
  off_t at = 0;
  ssize_t got;
  int is_whole = 1;
  /* By the descriptor that is there: closing another one of the same file would give up the locks of the process. */
  while ((got = pread(fd, block, sizeof block, at)) > 0) {
    is_whole &= write(to, block, (size_t)got) == got;
    at += got;
  }
  if (is_whole && got == 0) rename(draft, copy);
  close(to);
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

/* SQLite syncs the folder after it has removed a journal, so that the removal is as certain as a sync. */
int unlink(const char *path) {
  int (*real)(const char *) = (int (*)(const char *))dlsym(RTLD_NEXT, "unlink");
  const char *folder = getenv("SYNCED_COPIES"), *name = strrchr(path, '/');
  char copy[PATH_MAX + 64];
  int result = real(path);
  if (result == 0 && folder != NULL && name != NULL && strstr(name, ".sqlite") != NULL) {
    snprintf(copy, sizeof copy, "%s%s", folder, name);
    real(copy);
  }
  return result;
}
