ARG NODE_IMAGE=node:20.20.2-bookworm

# Build: compiler and development dependencies stay behind in this stage, as does what packages carry only for reading.
FROM ${NODE_IMAGE} AS build
WORKDIR /app
COPY package.json package-lock.json .npmrc ./
RUN npm ci
COPY tsconfig.json tsconfig.build.json ./
COPY src ./src
RUN npm run build && npm prune --omit=dev \
 && cd node_modules \
 && rm -rf .cache better-sqlite3/deps better-sqlite3/src \
 && find better-sqlite3/build -type f ! -name better_sqlite3.node -delete \
 && find . -type f \( -name '*.map' -o -name '*.d.ts' -o -name '*.d.mts' -o -name '*.d.cts' \) -delete \
 && find . -type d \( -name test -o -name tests -o -name __tests__ -o -name docs -o -name example -o -name examples \) -prune -exec rm -rf {} + \
 && node -e "new (require('better-sqlite3'))(':memory:')"

FROM ${NODE_IMAGE}-slim
ENV NODE_ENV=production \
    HOST=0.0.0.0 \
    PORT=8080 \
    DATA_DIR=/data
# HOST is reached from outside the container, so the service starts with access control only; the README says under Deploy
# what it asks for.
WORKDIR /app
RUN install -d -o node -g node -m 0700 /data
COPY --from=build /app/node_modules ./node_modules
COPY --from=build /app/dist ./dist
COPY package.json LICENSE ./
COPY profiles ./profiles
COPY terminology ./terminology
# By number, so that a platform which insists on another user than root can see that it is one.
USER 1000:1000
VOLUME /data
EXPOSE 8080
STOPSIGNAL SIGTERM
HEALTHCHECK --interval=15s --timeout=5s --start-period=20s \
  CMD ["node", "-e", "fetch(`http://127.0.0.1:${process.env.PORT}/health/ready`).then((r) => process.exit(r.ok ? 0 : 1), () => process.exit(1))"]
CMD ["node", "--enable-source-maps", "dist/main.js"]
