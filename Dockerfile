# Build: the compiler for the SQLite binding and the development dependencies stay behind in this stage.
FROM node:20-bookworm AS build
WORKDIR /app
COPY package.json package-lock.json .npmrc ./
RUN npm ci
COPY tsconfig.json tsconfig.build.json ./
COPY src ./src
RUN npm run build && npm prune --omit=dev

FROM node:20-bookworm-slim
ENV NODE_ENV=production \
    HOST=0.0.0.0 \
    PORT=8080 \
    DATA_DIR=/data
# HOST is reached from outside the container, so the service starts with access control only: AUTH_ISSUER, AUTH_AUDIENCE
# and AUTH_JWKS, or API_KEYS_FILE mounted into the container. TLS is for a proxy in front. To try it on one machine without,
# publish the port on a loopback address (-p 127.0.0.1:8080:8080) and set ALLOW_OPEN_NETWORK=true.
WORKDIR /app
RUN install -d -o node -g node -m 0700 /data
COPY --from=build /app/node_modules ./node_modules
COPY --from=build /app/dist ./dist
COPY package.json LICENSE ./
COPY profiles ./profiles
COPY terminology ./terminology
USER node
VOLUME /data
EXPOSE 8080
STOPSIGNAL SIGTERM
HEALTHCHECK --interval=15s --timeout=3s --start-period=10s \
  CMD ["node", "-e", "fetch(`http://127.0.0.1:${process.env.PORT}/health/ready`).then((r) => process.exit(r.ok ? 0 : 1), () => process.exit(1))"]
CMD ["node", "--enable-source-maps", "dist/main.js"]
