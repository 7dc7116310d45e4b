using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace PatternStudio.Studio.Data.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class DesignPhotos : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<Guid>(
                name: "PhotoId",
                table: "Designs",
                type: "uuid",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Name",
                table: "Accounts",
                type: "character varying(80)",
                maxLength: 80,
                nullable: false,
                defaultValue: "");

            migrationBuilder.CreateTable(
                name: "DesignPhotos",
                columns: table => new
                {
                    DesignId = table.Column<Guid>(type: "uuid", nullable: false),
                    PhotoId = table.Column<Guid>(type: "uuid", nullable: false),
                    Place = table.Column<int>(type: "integer", nullable: false),
                    Caption = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_DesignPhotos", x => new { x.DesignId, x.PhotoId });
                    table.ForeignKey(
                        name: "FK_DesignPhotos_Designs_DesignId",
                        column: x => x.DesignId,
                        principalTable: "Designs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_DesignPhotos_Photos_PhotoId",
                        column: x => x.PhotoId,
                        principalTable: "Photos",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Designs_PhotoId",
                table: "Designs",
                column: "PhotoId");

            migrationBuilder.CreateIndex(
                name: "IX_DesignPhotos_PhotoId",
                table: "DesignPhotos",
                column: "PhotoId");

            migrationBuilder.AddForeignKey(
                name: "FK_Designs_Photos_PhotoId",
                table: "Designs",
                column: "PhotoId",
                principalTable: "Photos",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "FK_Designs_Photos_PhotoId",
                table: "Designs");

            migrationBuilder.DropTable(
                name: "DesignPhotos");

            migrationBuilder.DropIndex(
                name: "IX_Designs_PhotoId",
                table: "Designs");

            migrationBuilder.DropColumn(
                name: "PhotoId",
                table: "Designs");

            migrationBuilder.DropColumn(
                name: "Name",
                table: "Accounts");
        }
    }
}
